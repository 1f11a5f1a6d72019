/**
 * Letters: what owners write, what it is about, and the answer to it.
 *
 * <p>To use it:
 *
 * <ol>
 *   <li>read a letter with {@link limberboard.letters.mail.MailReader};
 *   <li>ask a {@link limberboard.letters.recognise.Recogniser} for the boat, the symptoms, the
 *       answers that stand in it, and whether it is urgent;
 *   <li>draft an answer with a {@link limberboard.letters.answer.Drafter}, which a person edits;
 *   <li>keep what a person said and wrote with a {@link limberboard.letters.inbox.LetterFolder}.
 * </ol>
 *
 * <p>{@link limberboard.letters.reply.Replying} does both for a letter, going on from the earlier
 * ones of its conversation.
 *
 * <pre>{@code
 * import java.io.ByteArrayInputStream;
 * import java.nio.charset.StandardCharsets;
 * import limberboard.letters.mail.Letter;
 * import limberboard.letters.mail.MailReader;
 *
 * byte[] mail =
 *     "From: owner@example.org\nSubject: wet berth\n\nThe berth is wet.\n"
 *         .getBytes(StandardCharsets.UTF_8);
 * Letter letter = MailReader.read(new ByteArrayInputStream(mail));
 * assert letter.head().subject().equals("wet berth");
 * assert letter.own().equals("The berth is wet.");
 * }</pre>
 *
 * <p>The parts know one another in this order only: answers need nothing of how a letter was
 * recognised, so that a person can say what the program did not see.
 *
 * <p><b>Threads.</b> Everything is immutable; teaching the recogniser and drafting take seconds and
 * are done off the event thread.
 */
package limberboard.letters;
