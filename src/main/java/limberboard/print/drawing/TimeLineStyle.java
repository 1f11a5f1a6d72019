package limberboard.print.drawing;

/**
 * How a time line is drawn.
 *
 * @param width of the drawing
 * @param title width of the column of titles
 * @param note width of the column of notes
 * @param size of the letters
 */
record TimeLineStyle(double width, double title, double note, double size) {
  /** On a screen, or printed by itself across a sheet. */
  static final TimeLineStyle WIDE = new TimeLineStyle(1120, 330, 116, 12);

  /** Upright on A4 at its natural size, in letters of about 7 points. */
  static final TimeLineStyle PAPER = new TimeLineStyle(640, 226, 90, 10);

  /** Where the time axis begins. */
  double axis() {
    return title + note;
  }

  /** Letters of second rank. */
  double small() {
    return size - 1;
  }
}
