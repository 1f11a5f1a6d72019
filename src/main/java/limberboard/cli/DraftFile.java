package limberboard.cli;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.inbox.YardAddress;
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
 * @param from who sends them
 */
record DraftFile(OutFiles files, Mailbox from) {
  /**
   * From whom: as was asked for, otherwise as the workspace's file says.
   *
   * @throws Failure when what was asked for is no address
   */
  static DraftFile of(CommandContext session, OutFiles files, Optional<String> asked) {
    if (asked.isPresent()) {
      return new DraftFile(
          files,
          YardAddress.parse(asked.get())
              .orElseThrow(
                  () ->
                      new Failure(
                          ExitCode.USAGE,
                          "--from is an address such as office@tarnwick.example, or a name with it"
                              + " in angle brackets")));
    }
    YardAddress yard = YardAddress.read(files.folders());
    yard.problem().ifPresent(problem -> session.err().println(problem));
    return new DraftFile(files, yard.from());
  }

  /** Saves a draft as the answer to a letter, in its thread. */
  void save(Path file, AnswerDraft draft, LetterHead letter, List<SentFile> sent) {
    files.bytes(
        file,
        MailWriter.write(
            OutgoingLetter.answering(
                letter,
                from,
                OffsetDateTime.now(),
                AnswerId.of(letter, UUID.randomUUID()),
                draft.text(),
                draft.html(),
                sent)));
  }
}
