package limberboard.desktop.tree;

/** How much room text takes, in pixels at the usual zoom. */
interface Measure {
  /**
   * The width of a text on one line.
   *
   * @param text the text
   * @param strong whether it is set in the stronger weight
   */
  double width(String text, boolean strong);

  /** The height of a line. */
  double line();
}
