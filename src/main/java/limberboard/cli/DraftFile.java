package limberboard.cli;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.MailWriter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.OutgoingLetter;
import limberboard.letters.mail.OutgoingLetter.SentFile;

/**
 * Saves drafts as letters that a mail program opens.
 *
 * @param files writes them
 * @param from the address from which they are sent
 */
record DraftFile(OutFiles files, String from) {
  /** Saves a draft as the answer to a letter, in its thread. */
  void save(Path file, AnswerDraft draft, LetterHead letter, List<SentFile> sent) {
    files.bytes(
        file,
        MailWriter.write(
            OutgoingLetter.answering(
                letter,
                new Mailbox("", from),
                OffsetDateTime.now(),
                AnswerId.of(letter, UUID.randomUUID()),
                draft.text(),
                draft.html(),
                sent)));
  }
}
