/**
 * What is wrong with a page while it is being typed, with the letters it is about, and how the page
 * will look: {@link limberboard.writing.typing.PageTyping}.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.Optional;
 * import limberboard.library.*;
 * import limberboard.library.page.Kind;
 * import limberboard.writing.PageText;
 * import limberboard.writing.typing.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * var reader = new LibraryReader(folders);
 * reader.read();
 * var typing = new PageTyping(reader.typing("articles/topics/bends.md", Kind.TOPIC));
 * var read = typing.read(new PageText("---\ntitle: Bends\n---\nSee [hitches](hitches.md).\n"));
 * MarkedProblem lost = read.problems().get(0);
 * assert lost.problem().line() == 4 && lost.column() == 15;
 * assert read.cut(Optional.empty()).isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> The reader and the checks are those of {@code validate}; nothing is
 * checked twice in two ways. Only the page itself is read for each change, see {@code
 * docs/decisions/0044-writing-pages.md}.
 *
 * <p><b>Threads.</b> For one thread at a time, not the event thread.
 */
package limberboard.writing.typing;
