/**
 * Reading pages as a proofreader does: what a machine can find wrong in what they say.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>read what is looked for, {@link limberboard.proofread.file.TradeWordsFile}, a file of the
 *       library;
 *   <li>make a {@link limberboard.proofread.Proofreader} for a snapshot of the library;
 *   <li>{@link limberboard.proofread.Proofreader#read} a page, or {@link
 *       limberboard.proofread.Proofreader#readTyped read one as it is typed}.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import limberboard.library.*;
 * import limberboard.proofread.*;
 * import limberboard.proofread.file.*;
 *
 * var folders = NewWorkspace.in(Files.createTempDirectory("pages"));
 * Files.writeString(
 *     folders.articles().resolve("procedures/renew-the-strop.md"),
 *     "---\ntitle: Renew the strop\nsystem: rig\nwork: renew\nskill: owner\nminutes: 20\n---\n"
 *         + "1. Tie a new one.\n");
 * Library library = new LibraryReader(folders).read();
 * var words = TradeWordsFile.read(folders, library).words();
 * var proof = new Proofreader(folders, library, words).read(library.page("renew-the-strop").get());
 * assert proof.open().stream().anyMatch(finding -> finding.rule().equals("no-before")) : proof;
 * }</pre>
 *
 * <p><b>Choices made.</b> A rule is a small class in {@link limberboard.proofread.rule}; {@code
 * Rules} lists them. What words call for which caution, tool or order stands in the library and not
 * in the code. A rule that is wrong more often than once in three is not kept: {@code
 * docs/decisions/0049-proofread.md} has the count for each. An author's answer in the header
 * silences a finding, and one that answers nothing is itself said.
 *
 * <p><b>Threads.</b> A proofreader belongs to one thread at a time; everything else is immutable.
 */
package limberboard.proofread;
