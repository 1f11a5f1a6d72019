/**
 * What the Write place knows, without Swing: the pages that are open, what is typed in them, what
 * is wrong with it, and what is done to their files.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.desktop.write.state.WriteModel}, and say in a {@link
 *       limberboard.desktop.write.state.WriteOutside} what it touches outside the window;
 *   <li>open a page, tell the model what is typed, and listen to the page;
 *   <li>save with {@link limberboard.desktop.write.state.PageSaving}, rename and delete with {@link
 *       limberboard.desktop.write.state.PageChanges}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.time.Clock;
 * import java.util.*;
 * import limberboard.boat.*;
 * import limberboard.desktop.base.*;
 * import limberboard.desktop.write.state.*;
 * import limberboard.library.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path file = folders.articles().resolve("topics/bends.md");
 * Files.writeString(file, "---\ntitle: Bends\n---\nTwo ropes.\n");
 * var reader = new WorkspaceReader(folders);
 * var session = new Session(Clock.systemDefaultZone(), Optional.empty());
 * session.replace(reader.read());
 * var notices = new Notices();
 * var step = new Background(Runnable::run, Runnable::run, new Activity(), notices);
 * var outside =
 *     new WriteOutside(
 *         folders,
 *         reader::typing,
 *         step,
 *         step,
 *         step,
 *         Runnable::run,
 *         Runnable::run,
 *         TextStore.NONE,
 *         PageRecord.NONE,
 *         List::of,
 *         Clock.systemDefaultZone(),
 *         Guard.NONE);
 * var model = new WriteModel(session, notices, outside);
 * model.open("bends");
 * OpenPage page = model.current().orElseThrow();
 * model.typed(page, page.text().plain() + "See [hitches](hitches.md).\n");
 * assert page.isChanged() && page.problems().get(0).problem().line() == 5;
 * assert page.findings().size() == 1; // a proofreader has nothing to add
 * model.saving().save(page);
 * assert !page.isChanged() && Files.readString(file).endsWith("(hitches.md).\n");
 * }</pre>
 *
 * <p><b>Choices made.</b> Several pages are open at a time and stay so, each with its undo, until
 * they are closed: nothing has to be saved to look at another page. See {@code
 * docs/decisions/0048-write-place.md}. What a proofreader finds comes after what reading the text
 * says, on a thread of its own, and goes through the other pages once for each reading of the
 * library.
 *
 * <p><b>Threads.</b> Everything here belongs to the event thread; files are read and written, and
 * texts looked at, by the backgrounds.
 */
package limberboard.desktop.write.state;
