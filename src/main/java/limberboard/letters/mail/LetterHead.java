package limberboard.letters.mail;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/**
 * What a letter's header says, decoded (RFC 5322, RFC 2047).
 *
 * @param from who wrote it
 * @param replyTo where an answer is wanted, if not there
 * @param subject one line, or empty
 * @param date when it was written, if that could be read
 * @param id its message id in angle brackets, if it has one
 * @param repliesTo ids of the letters that it answers: {@code In-Reply-To}, then {@code References}
 *     from the latest on, each once
 * @param automatic whether a program wrote it: an absence note, a delivery report, a mailing list
 */
public record LetterHead(
    Optional<Mailbox> from,
    Optional<Mailbox> replyTo,
    String subject,
    Optional<OffsetDateTime> date,
    Optional<String> id,
    List<String> repliesTo,
    boolean automatic) {
  /** A head that says nothing, as of pasted text. */
  public static final LetterHead NONE =
      new LetterHead(
          Optional.empty(),
          Optional.empty(),
          "",
          Optional.empty(),
          Optional.empty(),
          List.of(),
          false);

  /** Copies the list. */
  public LetterHead {
    repliesTo = List.copyOf(repliesTo);
  }
}
