/**
 * Recognising what a letter is about: the boat, whether it is urgent, the symptoms, and the answers
 * that its writer gives already.
 *
 * <p>To use it: let {@link limberboard.letters.recognise.Teaching} learn from a workspace, once,
 * and ask its {@link limberboard.letters.recognise.Recogniser}:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.letters.mail.MailReader;
 * import limberboard.letters.recognise.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * Workspace workspace = new WorkspaceReader(folders).read();
 * var teaching = new Teaching(folders, workspace, LocalDate.of(2026, 11, 29));
 * Recognition seen = teaching.recogniser().recognise(MailReader.pasted(
 *     "On Whimbrel the keel creeps down overnight. No oil outside."));
 * assert seen.boat().orElseThrow().id().equals("whimbrel");
 * assert seen.symptoms().get(0).id().equals("keel-will-not-stay-up");
 * assert seen.urgent().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> A letter is read into words that know how they are meant: negated, over
 * and mended, supposed, believed by somebody. Each word has a weight for each symptom, for faults
 * that the library does not know, and for what is no fault; a few figures of these become chances
 * by a logistic regression. Whether it is urgent, and which of the boats it names is its own, is
 * learnt from lists of lines and whole letters and from recorded letters, beside a few rules. All
 * of it can be explained word by word, and all vocabulary lies in lists beside this package that a
 * person can edit. Why it is so, and how well it does: {@code
 * docs/decisions/0034-recognising-letters.md}.
 *
 * <p><b>Threads.</b> Everything may be used by several threads: it is immutable once made, but for
 * what answers to a symptom look like, which is learnt when it is first asked for. Making it reads
 * files; recognising does not.
 */
package limberboard.letters.recognise;
