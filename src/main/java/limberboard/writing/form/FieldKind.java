package limberboard.writing.form;

/** What a field of a header's form holds. */
public enum FieldKind {
  /** One text. */
  TEXT,
  /** A number. */
  NUMBER,
  /** Yes or no, written {@code true} or {@code false}. */
  YES_NO,
  /** One of a few words. */
  CHOICE,
  /** A period, such as {@code P1Y}. */
  PERIOD,
  /** The name of something: of a page, a zone, a picture. */
  NAME,
  /** A list of texts, words or names. */
  LIST,
  /** Keys within one another, or lists of them; edited as YAML. */
  NESTED
}
