/**
 * What can stand at the caret of a page that is written.
 *
 * <p>To use it: make a {@link limberboard.desktop.write.complete.CompletionFinder} for a page, and
 * ask it with the text and the place of the caret.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.desktop.write.complete.*;
 * import limberboard.library.*;
 * import limberboard.library.page.Kind;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Path topics = folders.articles().resolve("topics");
 * Files.writeString(topics.resolve("bends.md"), "---\ntitle: Bends and hitches\n---\nTwo.\n");
 * var library = new LibraryReader(folders).read();
 * var finder = new CompletionFinder(library, Kind.PROCEDURE, "articles/procedures/splice.md");
 * String typed = "---\ntitle: Splice\n---\nSee [them](../topics/b";
 * Completion found = finder.at(typed, typed.length());
 * assert found.candidates().get(0).letters().equals("../topics/bends.md");
 * String header = "---\ntitle: Splice\nskill: ha\n---\n";
 * Completion skill = finder.at(header, header.indexOf("ha\n") + 2);
 * assert skill.candidates().get(0).letters().equals("handy");
 * }</pre>
 *
 * <p><b>Choices made.</b> Keys, and what their values may be, are taken from the records that
 * headers are read into; there is no other list. Where in a header the caret is, is told by how far
 * lines are indented, because YAML that is being typed can seldom be parsed.
 *
 * <p><b>Threads.</b> Everything is immutable; any thread, best not the event thread.
 */
package limberboard.desktop.write.complete;
