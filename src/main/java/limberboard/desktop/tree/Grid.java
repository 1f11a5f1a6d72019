package limberboard.desktop.tree;

import limberboard.print.type.TextMeasure;

/**
 * The sizes that a tree is laid out with, all in proportion to the height of a line.
 *
 * @param measure how much room text takes
 */
record Grid(TextMeasure measure) {
  private static final double USUAL_LINE = 17;

  private double unit() {
    return measure.line() / USUAL_LINE;
  }

  double line() {
    return measure.line();
  }

  double boxWidth() {
    return 200 * unit();
  }

  double padding() {
    return 9 * unit();
  }

  /** Between a box and those behind it. */
  double gap() {
    return 140 * unit();
  }

  /** From a box to the trunk of its branches. */
  double stub() {
    return 26 * unit();
  }

  /** Between boxes above one another. */
  double between() {
    return 14 * unit();
  }

  /** The radius of the mark that folds. */
  double mark() {
    return 9 * unit();
  }

  /** Around everything. */
  double margin() {
    return 20 * unit();
  }

  double flag() {
    return measure.line() + 6 * unit();
  }

  double small() {
    return 4 * unit();
  }
}
