/**
 * Changes that reach beyond one page: {@link limberboard.writing.change.Renamer} gives a page
 * another id, with every place that names it, and {@link limberboard.writing.change.PageLinks} says
 * what names a page.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.library.*;
 * import limberboard.writing.change.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path topics = folders.articles().resolve("topics");
 * Files.writeString(topics.resolve("bends.md"), "---\ntitle: Bends\n---\n");
 * Files.writeString(topics.resolve("knots.md"), "---\ntitle: Knots\n---\n[Bends](bends.md#one)\n");
 * var library = new LibraryReader(folders).read();
 * assert new PageLinks(folders).to(library.page("bends").orElseThrow()).get(0).line() == 4;
 * var outcome = new Renamer(folders).rename(library, "bends", "bends-and-hitches");
 * assert outcome instanceof RenameOutcome.Renamed;
 * assert Files.readString(topics.resolve("knots.md")).contains("(bends-and-hitches.md#one)");
 * assert new Renamer(folders).finish().isEmpty(); // whenever a workspace is opened
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0043-renaming.md}. Where headers and boats'
 * files name pages is declared by the records they are read into ({@link
 * limberboard.library.value.Names}); links are found by the reader of Markdown.
 *
 * <p><b>Threads.</b> Stateless; any thread, not the event thread. Several programs may rename and
 * write at once.
 */
package limberboard.writing.change;
