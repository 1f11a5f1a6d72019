package limberboard.letters.mail;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * An answer to a letter, as it is to be sent.
 *
 * @param from who sends it
 * @param to who gets it; empty where that is not known
 * @param subject one line
 * @param date when it was written
 * @param id its message id in angle brackets
 * @param repliesTo the id of the letter that it answers, if that has one
 * @param references ids of the letters before it, the earliest first
 * @param text its text; a paragraph is one line
 * @param html the same as HTML
 * @param files what is sent with it
 */
public record OutgoingLetter(
    Mailbox from,
    Optional<Mailbox> to,
    String subject,
    OffsetDateTime date,
    String id,
    Optional<String> repliesTo,
    List<String> references,
    String text,
    String html,
    List<SentFile> files) {
  private static final Pattern AGAIN =
      Pattern.compile(
          "^(?:\\s*(?:re|aw|sv|antw)\\s*(?:\\[\\d+])?\\s*:)+\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\\u2028\\u2029]+");
  private static final String ANSWER = "Re: ";

  /** Copies the lists; no field of the header keeps a line end. */
  public OutgoingLetter {
    from = oneLine(from);
    to = to.map(OutgoingLetter::oneLine);
    subject = oneLine(subject);
    references = List.copyOf(references);
    files = List.copyOf(files);
  }

  /**
   * A file that is sent with a letter.
   *
   * @param name its name; what is no plain letter in it becomes a line below
   * @param media its media type, such as {@code application/pdf}
   * @param bytes what is in it
   */
  public record SentFile(String name, String media, byte[] bytes) {
    /** Copies the bytes. */
    public SentFile {
      name = oneLine(name).replaceAll("[^\\x20-\\x7e]|[\"\\\\/]", "_");
      bytes = bytes.clone();
    }

    @Override
    public byte[] bytes() {
      return bytes.clone();
    }
  }

  /**
   * An answer to a letter: to whom it says it wants one, under its subject with one {@code Re:}, in
   * its thread (RFC 5322, section 3.6.4).
   *
   * @param letter the head of the letter that is answered
   * @param from who answers
   * @param date when
   * @param id the answer's own message id, in angle brackets
   * @param text the answer
   * @param html the same as HTML
   * @param files what is sent with it
   */
  public static OutgoingLetter answering(
      LetterHead letter,
      Mailbox from,
      OffsetDateTime date,
      String id,
      String text,
      String html,
      List<SentFile> files) {
    Set<String> thread = new LinkedHashSet<>();
    List<String> before = new ArrayList<>(letter.repliesTo());
    for (int i = before.size() - 1; i >= 0; i--) {
      thread.add(before.get(i));
    }
    letter.id().ifPresent(own -> thread.remove(own));
    letter.id().ifPresent(thread::add);
    return new OutgoingLetter(
        from,
        letter.replyTo().or(letter::from).filter(mailbox -> !mailbox.address().isEmpty()),
        answered(letter.subject()),
        date,
        id,
        letter.id(),
        List.copyOf(thread),
        text,
        html,
        files);
  }

  /** The subject of an answer: the letter's, with {@code Re:} before it once. */
  public static String answered(String subject) {
    return (ANSWER + AGAIN.matcher(oneLine(subject)).replaceFirst("")).strip();
  }

  private static Mailbox oneLine(Mailbox mailbox) {
    return new Mailbox(oneLine(mailbox.name()), oneLine(mailbox.address()));
  }

  private static String oneLine(String text) {
    return CONTROLS.matcher(text).replaceAll(" ").strip();
  }
}
