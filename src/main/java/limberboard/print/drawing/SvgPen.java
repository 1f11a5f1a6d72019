package limberboard.print.drawing;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import limberboard.print.drawing.DrawnBox.Line;

/**
 * Draws shapes and lines of text as SVG, in the colours of the library's drawings on white. For one
 * drawing, on one thread.
 */
final class SvgPen {
  static final String INK = "#16324f";
  static final String THIN = "#5b7389";
  static final String PAPER = "#ffffff";
  static final String NONE = "none";
  private static final double BASELINE = 0.95;
  private static final String KINDS = "MLQCz";
  private static final int[] NUMBERS = {2, 2, 4, 6, 0};

  private final Markup out = new Markup();

  /** An empty drawing on white. */
  SvgPen(String title, double width, double height) {
    String w = number(width);
    String h = number(height);
    out.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%s\" height=\"%s\"".formatted(w, h))
        .raw(
            " viewBox=\"0 0 %s %s\" role=\"img\" font-family=\"Inter, sans-serif\">"
                .formatted(w, h))
        .line();
    out.plainElement("title", title).line();
    shape(new Rectangle2D.Double(0, 0, width, height), PAPER, NONE, 0);
  }

  /**
   * A shape.
   *
   * @param fill its colour, or {@link #NONE}
   * @param stroke the colour of its edge, or {@link #NONE}
   * @param strength of its edge
   * @param more names and values of attributes in turn
   */
  void shape(Shape shape, String fill, String stroke, double strength, String... more) {
    out.raw("<path fill=\"%s\" stroke=\"%s\"".formatted(fill, stroke));
    out.raw(" stroke-width=\"%s\" d=\"%s\"".formatted(number(strength), way(shape)));
    out.attributes(more).raw("/>").line();
  }

  private static String way(Shape shape) {
    StringBuilder way = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator parts = shape.getPathIterator(null); !parts.isDone(); parts.next()) {
      int kind = parts.currentSegment(at);
      way.append(KINDS.charAt(kind));
      for (int i = 0; i < NUMBERS[kind]; i++) {
        way.append(i == 0 ? "" : " ").append(number(at[i]));
      }
    }
    return way.toString();
  }

  /**
   * Lines of text from this upper left corner, as wide as Inter makes them in whatever typeface
   * they are shown.
   *
   * @return where they end
   */
  double lines(List<Line> lines, double x, double y) {
    double top = y;
    for (Line line : lines) {
      out.plainElement(
              "text",
              line.text(),
              "x",
              number(x),
              "y",
              number(top + line.size() * BASELINE),
              "font-size",
              number(line.size()),
              "font-weight",
              line.bold() ? "bold" : "normal",
              "fill",
              INK,
              "textLength",
              number(line.width()))
          .line();
      top += line.height();
    }
    return top;
  }

  /** What is drawn until the group ends belongs together. */
  void group(Runnable drawing) {
    out.open("g").line();
    drawing.run();
    out.close("g").line();
  }

  /** The whole drawing. */
  String finish() {
    return out.close("svg").line().toString();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
