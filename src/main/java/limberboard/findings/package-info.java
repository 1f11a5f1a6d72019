/**
 * What is found wrong in a workspace beyond what reading it says, and what one step does about it:
 * what the planner makes of the symptom pages; the repair of a name that leads nowhere, of a figure
 * that is quoted wrongly, and of a header's list that a proofreader finds fault with; the note that
 * a page was read in full.
 *
 * <p>To use it: ask {@link limberboard.findings.PlanWarnings} of a workspace, {@link
 * limberboard.findings.Repair} of any problem, {@link limberboard.findings.HeaderRepair} of what a
 * proofreader says, and {@link limberboard.findings.FullReading} of a page's file.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.findings.*;
 * import limberboard.library.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("findings"));
 * Path topics = folders.articles().resolve("topics");
 * Files.writeString(topics.resolve("bowlines.md"), "---\ntitle: Bowlines\n---\nTie it.\n");
 * Path knots = topics.resolve("knots.md");
 * Files.writeString(knots, "---\ntitle: Knots\n---\nSee [one](bowlins.md).\n");
 * var library = new LibraryReader(folders).read();
 * var repair = Repair.of(library.problems().get(0), library).orElseThrow();
 * assert repair.words().contains("bowlines.md");
 * assert repair.make(folders).isEmpty();
 * assert Files.readString(knots).contains("(bowlines.md)");
 * }</pre>
 *
 * <p><b>Choices made.</b> A repair is offered only where one page alone can be meant, and is made
 * only where the line still says what it said. A figure is written on all pages that quote it. A
 * list of a header is changed only where it alone is changed by that: the header is read again, and
 * must say the same otherwise.
 *
 * <p><b>Threads.</b> Values are immutable; nothing here is for the event thread.
 */
package limberboard.findings;
