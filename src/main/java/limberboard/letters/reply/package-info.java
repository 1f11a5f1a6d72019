/**
 * From a letter to its answer: which letters belong together, what all of them told, and what there
 * is to answer to the one that comes now.
 *
 * <p>To use it: read the letters of a folder, let a {@link limberboard.letters.recognise.Teaching}
 * learn, and ask {@link limberboard.letters.reply.Replying}:
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.time.LocalDate;
 * import limberboard.boat.*;
 * import limberboard.letters.recognise.Teaching;
 * import limberboard.letters.mail.LetterAsFile;
 * import limberboard.letters.reply.*;
 * import limberboard.library.file.WorkspaceFolders;
 *
 * var folders = new WorkspaceFolders(Path.of(""));
 * var workspace = new WorkspaceReader(folders).read();
 * var conversations = new Conversations(LetterFiles.mail(folders.letters()));
 * var teaching = new Teaching(folders, workspace, LocalDate.of(2026, 11, 29));
 * var replying = new Replying(teaching, workspace, conversations);
 *
 * var second = folders.letters().resolve("ines-hose-second.eml");
 * Reply reply = replying.to(LetterAsFile.read(second));
 * assert reply.earlier().get(0).name().equals("drips-on-the-pillow-sanderling.eml");
 * assert !reply.traces().get(0).answers().isEmpty();
 * assert replying.draft(reply).orElseThrow().block("water-in-forward-cabin/told").isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> Headers alone join letters; which of its faults a letter goes on with is
 * said by its words. A letter that surely tells of another boat or of another symptom alone begins
 * anew, also in an old thread. An answer to a check takes the place of an earlier one, and it is
 * said; <i>cannot tell</i> takes the place of nothing. Answers by number are read by the numbers of
 * our own answer as it is quoted, else as it was kept, else as it would be drafted. Why it is so:
 * {@code docs/decisions/0038-conversations.md}.
 *
 * <p><b>Threads.</b> Everything that is handed out is immutable. Replying recognises each letter of
 * the conversation, so it may take a second: not on the event thread.
 */
package limberboard.letters.reply;
