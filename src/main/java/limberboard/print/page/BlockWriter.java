package limberboard.print.page;

/**
 * Writes blocks as one output shows them. It has a method for each kind there is, so that an output
 * which does not know a new one does not compile.
 */
public interface BlockWriter {
  /** Writes a heading. */
  void heading(Block.Heading heading);

  /** Writes a paragraph. */
  void paragraph(Block.Paragraph paragraph);

  /** Writes a list. */
  void items(Block.Items items);

  /** Writes quoted blocks. */
  void quote(Block.Quote quote);

  /** Writes text kept line by line. */
  void verbatim(Block.Verbatim verbatim);

  /** Writes a line across. */
  void rule(Block.Rule rule);

  /** Writes a table. */
  void table(Block.Table table);

  /** Writes a caution in full. */
  void caution(Block.CautionBox box);

  /** Writes a caution in two lines. */
  void shortCaution(Block.ShortCaution caution);

  /** Writes cautions that have been read, by name. */
  void foldedCautions(Block.FoldedCautions folded);

  /** Writes what must be known before going on. */
  void notice(Block.Notice notice);

  /** Writes a drawing made for the page. */
  void drawing(Block.Drawing drawing);

  /** Writes forks of a tree. */
  void forks(Block.Forks forks);

  /** Writes things to tick off. */
  void ticks(Block.TickList list);

  /** Writes facts with their names. */
  void facts(Block.Facts facts);
}
