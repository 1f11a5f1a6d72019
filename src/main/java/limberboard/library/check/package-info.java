/**
 * What makes pages fit each other: references, orders, circles, links, cautions, figures within
 * their range. Each kind of page has a check of its own; {@link
 * limberboard.library.check.LibraryCheck} runs them all.
 *
 * <p>To use it: read pages with a {@link limberboard.library.LibraryReader}, which runs the checks.
 * To add one that only a higher room can make, hand the reader a {@link
 * limberboard.library.check.FurtherCheck}:
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.List;
 * import limberboard.library.*;
 * import limberboard.library.check.FurtherCheck;
 *
 * FurtherCheck brief =
 *     (page, findings) -> {
 *       if (page.title().length() > 8) {
 *         findings.error("/title", "is long", "eight letters will do");
 *       }
 *     };
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path page = folders.articles().resolve("topics/bends.md");
 * Files.writeString(page, "---\ntitle: Bends and hitches\n---\n");
 * var problem = new LibraryReader(folders, List.of(brief)).read().problems().get(0);
 * assert problem.line() == 2 && problem.wrong().equals("is long");
 * }</pre>
 *
 * <p><b>Choices made.</b> A check reads and reports, and changes nothing, but for {@link
 * limberboard.library.check.FigureCheck}, which also puts into pages what the figures that they
 * quote say now. A check names a key by its JSON pointer, and the report finds the line. What the
 * library cannot judge is a {@link limberboard.library.check.FurtherCheck} that a higher room gives
 * it.
 *
 * <p><b>Threads.</b> Checks keep nothing from page to page; a report belongs to one thread.
 */
package limberboard.library.check;
