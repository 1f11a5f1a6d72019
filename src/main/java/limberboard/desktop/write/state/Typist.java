package limberboard.desktop.write.state;

/** Where a page's text is typed. For the event thread only. */
public interface Typist {
  /**
   * Puts another text in the place of what stands there, as if it had been typed: undo takes it
   * back.
   *
   * @param plain with line ends {@code \n}
   */
  void replace(String plain);

  /** Goes to a stretch of the text and selects it. */
  void goTo(int from, int to);

  /** Where the caret is, in letters from the beginning of the text. */
  int caret();
}
