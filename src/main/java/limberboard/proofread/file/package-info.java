/**
 * The library's file of what a proofreader looks for, {@code articles/proofreading.yaml}; its keys
 * are in {@code docs/file-formats.md}.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.library.*;
 * import limberboard.proofread.file.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Files.writeString(
 *     folders.articles().resolve(TradeWordsFile.NAME),
 *     "cautions:\n  - {words: [petrol], carry: [petrol-vapour]}\n");
 * var file = TradeWordsFile.read(folders, new LibraryReader(folders).read());
 * assert file.words().cautions().size() == 1;
 * assert file.problems().get(0).line() == 2; // there is no such caution
 * }</pre>
 *
 * <p><b>Choices made.</b> Read like a header, so that what is wrong in it is said with its line,
 * and the rest works.
 *
 * <p><b>Threads.</b> All immutable.
 */
package limberboard.proofread.file;
