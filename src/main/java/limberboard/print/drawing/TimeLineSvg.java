package limberboard.print.drawing;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import limberboard.print.drawing.TimeLineLayout.DayMark;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Season;

/** Draws a placed time line. For one drawing, on one thread. */
final class TimeLineSvg {
  private static final String AFLOAT = "#dfeaf0";

  private final TimeLine line;
  private final TimeLineLayout placed;
  private final TimeLineStyle style;
  private final SvgPen pen;

  TimeLineSvg(TimeLine line, TimeLineLayout placed, TimeLineStyle style) {
    this.line = line;
    this.placed = placed;
    this.style = style;
    String title = "Upkeep of " + line.boat() + " over the coming seasons";
    this.pen = new SvgPen(title, style.width(), placed.height());
  }

  /** The drawing. */
  String write() {
    placed.areas().forEach(area -> pen.shape(area, AFLOAT, SvgPen.NONE, 0));
    placed.rules().forEach(y -> across(y, 0.5));
    across(placed.headBottom(), 1.2);
    for (Season season : line.seasons()) {
      double x = placed.x(season.to());
      if (x < style.width() - 1) {
        rule(x, 0, x, placed.height(), 0.8);
      }
    }
    double today = placed.x(line.on());
    rule(today, placed.headBottom(), today, placed.height(), 0.8);
    placed.bars().forEach(bar -> pen.shape(bar, SvgPen.PAPER, SvgPen.INK, 1));
    placed.marks().forEach(this::mark);
    placed.texts().forEach(text -> pen.lines(List.of(text.line()), text.x(), text.y()));
    return pen.finish();
  }

  private void mark(DayMark mark) {
    double r = style.size() * 0.36;
    Shape shape =
        mark.overdue()
            ? Outlines.polygon(
                new double[] {mark.x() - r, mark.x() + r * 1.3, mark.x() - r},
                new double[] {mark.y() - r * 1.2, mark.y(), mark.y() + r * 1.2})
            : new Ellipse2D.Double(mark.x() - r, mark.y() - r, 2 * r, 2 * r);
    String what = mark.overdue() ? "overdue" : "planned";
    pen.shape(shape, SvgPen.INK, SvgPen.NONE, 0, "class", what);
  }

  private void across(double y, double strength) {
    rule(0, y, style.width(), y, strength);
  }

  private void rule(double x1, double y1, double x2, double y2, double strength) {
    pen.shape(new Line2D.Double(x1, y1, x2, y2), SvgPen.NONE, SvgPen.THIN, strength);
  }
}
