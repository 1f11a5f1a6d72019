package limberboard.print.drawing;

import java.util.List;
import java.util.Locale;
import limberboard.print.drawing.DrawnBox.Line;

/** Writes the boxes and lines of a drawn tree as SVG. For one drawing, on one thread. */
final class TreeSvg {
  private static final String INK = "#16324f";
  private static final String THIN = "#5b7389";
  private static final String PAPER = "#ffffff";
  private static final String SHADED = "#eef3f5";
  private static final String ACCENT = "#1f7a6d";
  private static final String DANGER = "#c2571a";
  private static final double BASELINE = 0.95;
  private static final double NOTCH = 9;

  private final Markup out = new Markup();

  TreeSvg(String title, double width, double height) {
    String w = number(width);
    String h = number(height);
    out.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "width",
            w,
            "height",
            h,
            "viewBox",
            "0 0 " + w + " " + h,
            "role",
            "img",
            "font-family",
            "Inter, sans-serif")
        .line();
    out.plainElement("title", title).line();
    out.empty("rect", "width", w, "height", h, "fill", PAPER).line();
  }

  /** A line with its text. */
  void edge(DrawnEdge edge) {
    double turn = edge.fromX() + DrawnEdge.TRUNK;
    path(
        "M"
            + point(edge.fromX(), edge.fromY())
            + " H"
            + number(turn)
            + " V"
            + number(edge.toY())
            + " H"
            + number(edge.toX()),
        "none",
        THIN,
        "1.5",
        "none");
    double x = turn + DrawnEdge.INDENT;
    double above = edge.above().stream().mapToDouble(Line::height).sum();
    lines(edge.above(), x, edge.toY() - above - DrawnEdge.ABOVE);
    lines(List.of(edge.below()), x, edge.toY() + 2);
  }

  /** A box with its text. */
  void box(DrawnBox box) {
    out.open("g").line();
    outline(box);
    lines(box.lines(), box.x() + DrawnBox.PADDING, box.y() + DrawnBox.MARGIN);
    out.close("g").line();
  }

  private void outline(DrawnBox box) {
    switch (box.shape()) {
      case CHECK -> path(rectangle(box), SHADED, INK, "1.2", "none");
      case MEND -> path(cutCorners(box), PAPER, ACCENT, "2.5", "none");
      case YARD -> path(arrow(box), PAPER, INK, "2.5", "none");
      case MENDED -> rounded(box, ACCENT, "1.5", "none");
      case SELDOM -> rounded(box, THIN, "1.2", "5 4");
      case CAUTION -> path(rectangle(box), PAPER, DANGER, "2", "none");
    }
  }

  private static String rectangle(DrawnBox box) {
    return "M"
        + point(box.x(), box.y())
        + " h"
        + number(box.width())
        + " v"
        + number(box.height())
        + " h"
        + number(-box.width())
        + " z";
  }

  private static String cutCorners(DrawnBox box) {
    double right = box.x() + box.width();
    double low = box.y() + box.height();
    return polygon(
        List.of(
            point(box.x() + NOTCH, box.y()),
            point(right - NOTCH, box.y()),
            point(right, box.y() + NOTCH),
            point(right, low - NOTCH),
            point(right - NOTCH, low),
            point(box.x() + NOTCH, low),
            point(box.x(), low - NOTCH),
            point(box.x(), box.y() + NOTCH)));
  }

  /** Pointed to the right, within the padding. */
  private static String arrow(DrawnBox box) {
    double shoulder = box.x() + box.width() - DrawnBox.PADDING + 2;
    return polygon(
        List.of(
            point(box.x(), box.y()),
            point(shoulder, box.y()),
            point(box.x() + box.width(), box.middle()),
            point(shoulder, box.y() + box.height()),
            point(box.x(), box.y() + box.height())));
  }

  private static String polygon(List<String> points) {
    return "M" + String.join(" L", points) + " z";
  }

  private void rounded(DrawnBox box, String stroke, String strength, String dashes) {
    out.empty(
            "rect",
            "x",
            number(box.x()),
            "y",
            number(box.y()),
            "width",
            number(box.width()),
            "height",
            number(box.height()),
            "rx",
            number(Math.min(box.height() / 2, DrawnBox.PADDING)),
            "fill",
            PAPER,
            "stroke",
            stroke,
            "stroke-width",
            strength,
            "stroke-dasharray",
            dashes)
        .line();
  }

  private void path(String way, String fill, String stroke, String strength, String dashes) {
    out.empty(
            "path",
            "d",
            way,
            "fill",
            fill,
            "stroke",
            stroke,
            "stroke-width",
            strength,
            "stroke-dasharray",
            dashes)
        .line();
  }

  /**
   * Lines of text from this upper left corner.
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
              INK)
          .line();
      top += line.height();
    }
    return top;
  }

  /** The whole drawing. */
  String finish() {
    return out.close("svg").line().toString();
  }

  private static String point(double x, double y) {
    return number(x) + "," + number(y);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
