package limberboard.letters.mail;

/**
 * A stretch of a letter's text that is of one kind.
 *
 * @param kind what it is
 * @param text its lines, without blank ones before and after; not empty
 */
public record Passage(Kind kind, String text) {
  /** What a stretch of text is. */
  public enum Kind {
    /** What was written for this letter. */
    OWN,
    /** An earlier letter that is quoted. */
    QUOTED,
    /** A letter that was sent on. */
    FORWARDED,
    /** The greeting at the end, with names and addresses. */
    SIGNATURE,
    /** What a mail program or a firm adds to each letter. */
    NOTICE
  }
}
