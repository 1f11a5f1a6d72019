package limberboard.print.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import limberboard.print.drawing.DrawnBox.Line;

/** Draws the boxes and lines of a tree. For one drawing, on one thread. */
final class TreeSvg {
  private static final String SHADED = "#eef3f5";
  private static final String ACCENT = "#1f7a6d";
  private static final String DANGER = "#c2571a";
  private static final double NOTCH = 9;

  private final SvgPen pen;

  TreeSvg(SvgPen pen) {
    this.pen = pen;
  }

  /** A line with its text. */
  void edge(DrawnEdge edge) {
    double turn = edge.fromX() + DrawnEdge.TRUNK;
    Path2D way = new Path2D.Double();
    way.moveTo(edge.fromX(), edge.fromY());
    way.lineTo(turn, edge.fromY());
    way.lineTo(turn, edge.toY());
    way.lineTo(edge.toX(), edge.toY());
    pen.shape(way, SvgPen.NONE, SvgPen.THIN, 1.5);
    double x = turn + DrawnEdge.INDENT;
    double above = edge.above().stream().mapToDouble(Line::height).sum();
    pen.lines(edge.above(), x, edge.toY() - above - DrawnEdge.ABOVE);
    pen.lines(List.of(edge.below()), x, edge.toY() + 2);
  }

  /** A box with its text. */
  void box(DrawnBox box) {
    pen.group(
        () -> {
          outline(box);
          pen.lines(box.lines(), box.x() + DrawnBox.PADDING, box.y() + DrawnBox.MARGIN);
        });
  }

  private void outline(DrawnBox box) {
    Rectangle2D square = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
    switch (box.shape()) {
      case CHECK -> pen.shape(square, SHADED, SvgPen.INK, 1.2);
      case MEND -> pen.shape(Outlines.mend(square, NOTCH), SvgPen.PAPER, ACCENT, 2.5);
      case YARD -> pen.shape(arrow(box), SvgPen.PAPER, SvgPen.INK, 2.5);
      case MENDED -> pen.shape(rounded(box), SvgPen.PAPER, ACCENT, 1.5);
      case SELDOM ->
          pen.shape(rounded(box), SvgPen.PAPER, SvgPen.THIN, 1.2, "stroke-dasharray", "5 4");
      case ELSEWHERE -> pen.shape(square, SvgPen.PAPER, SvgPen.INK, 1.2, "stroke-dasharray", "2 3");
      case CAUTION -> pen.shape(square, SvgPen.PAPER, DANGER, 2);
    }
  }

  /** Pointed to the right, within the padding. */
  private static Shape arrow(DrawnBox box) {
    double left = box.x();
    double right = left + box.width();
    double low = box.y() + box.height();
    double shoulder = right - DrawnBox.PADDING + 2;
    return Outlines.polygon(
        new double[] {left, shoulder, right, shoulder, left},
        new double[] {box.y(), box.y(), box.middle(), low, low});
  }

  private static Shape rounded(DrawnBox box) {
    double arc = 2 * Math.min(box.height() / 2, DrawnBox.PADDING);
    return new RoundRectangle2D.Double(box.x(), box.y(), box.width(), box.height(), arc, arc);
  }
}
