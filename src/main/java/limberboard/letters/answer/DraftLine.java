package limberboard.letters.answer;

/**
 * A line of a draft.
 *
 * @param kind what it is
 * @param text what it says, in one line, without marks
 */
public record DraftLine(Kind kind, String text) {
  /** What a line is. */
  public enum Kind {
    /** What stands over others. */
    HEADING,
    /** A paragraph. */
    PARAGRAPH,
    /** One of several. */
    ITEM
  }

  static DraftLine heading(String text) {
    return new DraftLine(Kind.HEADING, text.strip());
  }

  static DraftLine paragraph(String text) {
    return new DraftLine(Kind.PARAGRAPH, text.strip());
  }

  static DraftLine item(String text) {
    return new DraftLine(Kind.ITEM, text.strip());
  }
}
