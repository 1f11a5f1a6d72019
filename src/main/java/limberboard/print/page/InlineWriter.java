package limberboard.print.page;

/**
 * Writes runs of text as one output shows them. It has a method for each kind there is, so that an
 * output which does not know a new one does not compile.
 */
public interface InlineWriter {
  /** Writes plain text. */
  void text(Inline.Text text);

  /** Writes stressed text. */
  void emphasis(Inline.Emphasis emphasis);

  /** Writes strongly stressed text. */
  void strong(Inline.Strong strong);

  /** Writes what is read letter by letter. */
  void code(Inline.Code code);

  /** Writes a link to a page. */
  void link(Inline.PageLink link);

  /** Writes the name of a caution at the place where it bites. */
  void cautionName(Inline.CautionName name);

  /** Writes a picture of the workspace. */
  void picture(Inline.Picture picture);

  /** Writes a line's end. */
  void lineBreak(Inline.LineBreak end);
}
