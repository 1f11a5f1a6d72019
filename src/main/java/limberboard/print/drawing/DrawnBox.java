package limberboard.print.drawing;

import java.util.List;
import limberboard.print.type.FontMeasure;
import limberboard.print.type.TextMeasure;

/**
 * A box of a drawing with the lines of text in it, in user units.
 *
 * @param shape what it stands for
 * @param x left edge
 * @param y upper edge
 * @param width width
 * @param height height
 * @param lines the text, from the top
 */
record DrawnBox(Shape shape, double x, double y, double width, double height, List<Line> lines) {
  /** Room between the edge and the text, left and right. */
  static final double PADDING = 14;

  /** Room between the edge and the text, above and below. */
  static final double MARGIN = 7;

  /** What a box stands for; each has a form of its own. */
  enum Shape {
    /** A question. */
    CHECK,
    /** A mend that the owner may do. */
    MEND,
    /** Handing over. */
    YARD,
    /** The good end. */
    MENDED,
    /** Not drawn further. */
    SELDOM,
    /** Left out of a tree that is cut down. */
    ELSEWHERE,
    /** A caution. */
    CAUTION
  }

  /**
   * A line of text.
   *
   * @param text the text
   * @param size of the letters
   * @param bold whether in bold
   */
  record Line(String text, double size, boolean bold) {
    private static final double SPACING = 1.32;
    private static final int UNITS = 100;
    private static final TextMeasure INTER = FontMeasure.inter(UNITS);

    /** From this line's upper edge to the next one's. */
    double height() {
      return size * SPACING;
    }

    /** How wide it is in the typeface of the drawings. */
    double width() {
      return INTER.width(text, bold) * size / UNITS;
    }

    /** The text broken into lines. */
    static List<Line> wrap(String text, double size, boolean bold, double room) {
      return INTER.lines(text, bold, room * UNITS / size, Integer.MAX_VALUE).stream()
          .map(line -> new Line(line, size, bold))
          .toList();
    }
  }

  /** Copies the lines. */
  DrawnBox {
    lines = List.copyOf(lines);
  }

  /** How high a box with these lines is. */
  static double height(List<Line> lines) {
    return lines.stream().mapToDouble(Line::height).sum() + 2 * MARGIN;
  }

  /** The room for text in a box so wide. */
  static double room(double width) {
    return width - 2 * PADDING;
  }

  DrawnBox at(double newX, double newY) {
    return new DrawnBox(shape, newX, newY, width, height, lines);
  }

  double middle() {
    return y + height / 2;
  }
}
