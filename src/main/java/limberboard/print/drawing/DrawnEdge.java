package limberboard.print.drawing;

import java.util.List;

/**
 * A line from one box to the next, with what is found above it and the chance below it.
 *
 * @param fromX where it begins
 * @param fromY where it begins
 * @param toX where it ends
 * @param toY where it ends
 * @param above lines of text above it
 * @param below one line of text below it
 */
record DrawnEdge(
    double fromX,
    double fromY,
    double toX,
    double toY,
    List<DrawnBox.Line> above,
    DrawnBox.Line below) {
  /** How far the line runs before it turns up or down. */
  static final double TRUNK = 14;

  /** Room between the turn and the text. */
  static final double INDENT = 6;

  /** Room between the line and the text above it. */
  static final double ABOVE = 3;

  /** Copies the lines. */
  DrawnEdge {
    above = List.copyOf(above);
  }

  /** The room for text on a line so long. */
  static double room(double length) {
    return length - TRUNK - 2 * INDENT;
  }
}
