/**
 * The library: pages read from {@code articles/} into an immutable {@link
 * limberboard.library.Library}.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>make a {@link limberboard.library.LibraryReader} for a {@link
 *       limberboard.library.file.WorkspaceFolders};
 *   <li>call {@link limberboard.library.LibraryReader#read()} for a snapshot, again whenever files
 *       have changed: only changed files are parsed anew;
 *   <li>ask the snapshot for pages, links and {@link limberboard.library.problem.Problem problems}.
 * </ol>
 *
 * <p>A {@link limberboard.library.page.Page} is a file: what every page has ({@link
 * limberboard.library.page.Head}), what its kind adds ({@link limberboard.library.page.Details}, a
 * sealed interface) and its Markdown. Nothing here knows a boat: conditions such as {@code fits}
 * are data ({@link limberboard.library.value.Condition}), judged one layer up.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.library.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path page = folders.articles().resolve("topics/knots.md");
 * Files.writeString(
 *     page, "---\ntitle: Knots\ncolour: red\n---\nA [bend](bends.md) joins two ropes.\n");
 *
 * Library library = new LibraryReader(folders).read();
 * assert library.page("knots").orElseThrow().title().equals("Knots");
 * assert library.problems().stream().anyMatch(problem -> problem.key().equals("colour"));
 * assert library.problems().stream().anyMatch(problem -> problem.line() == 5); // no such page
 * }</pre>
 *
 * <p><b>Choices made.</b> A header is composed to nodes with line numbers, and then bound to
 * records; every problem is collected with file, line, key, what is wrong and what would be right.
 * A page whose required keys cannot be read is left out of the snapshot and reported; a wrong
 * optional key is reported and counts as absent. No page can hide another. Nothing throws for what
 * a person wrote; {@link java.io.IOException} is thrown only when the {@code articles} folder
 * itself cannot be listed. What a page quotes of a figure stands in the snapshot as the figure says
 * it now, see {@code docs/decisions/0053-figures-said-once.md}.
 *
 * <p><b>Threads.</b> Snapshots and everything in them are immutable. A reader belongs to one thread
 * at a time.
 */
package limberboard.library;
