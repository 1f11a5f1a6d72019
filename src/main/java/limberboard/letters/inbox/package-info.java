/**
 * The folder of letters as an inbox: which letters lie there, how far each has come, and what a
 * person said of each that the program did not see.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>list a workspace's letters with a {@link limberboard.letters.inbox.LetterFolder};
 *   <li>read a letter's head, the whole letter, or a picture that came with it;
 *   <li>read its {@link limberboard.letters.inbox.LetterNote}, and change that.
 * </ol>
 *
 * <pre>{@code
 * import java.nio.charset.StandardCharsets;
 * import java.nio.file.Files;
 * import java.time.LocalDate;
 * import limberboard.letters.inbox.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folder = new LetterFolder(new WorkspaceFolders(Files.createTempDirectory("yard")));
 * byte[] mail = "Subject: wet berth\n\nThe berth is wet.\n".getBytes(StandardCharsets.UTF_8);
 * String name = folder.add("wet berth.eml", mail);
 * assert folder.list().get(0).name().equals(name);
 * assert folder.read(name).own().equals("The berth is wet.");
 * folder.change(name, note -> note.in(LetterState.ANSWERED, LocalDate.of(2026, 11, 29)));
 * assert folder.note(name).note().state() == LetterState.ANSWERED;
 * }</pre>
 *
 * <p><b>Choices made.</b> What is known of a letter lies in a file of its own beside it, {@code
 * NAME.eml.state}: two people who answer two letters never write the same file, a damaged one is
 * the trouble of one letter only, and what a recorded letter should give stays as it is. Why it is
 * so: {@code docs/decisions/0037-letters-place.md}.
 *
 * <p><b>Threads.</b> Everything can be used by several threads. It reads and writes files, so not
 * on the event thread.
 */
package limberboard.letters.inbox;
