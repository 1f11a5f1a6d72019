package limberboard.print.drawing;

import java.util.Locale;
import limberboard.print.drawing.TimeLineLayout.Area;
import limberboard.print.drawing.TimeLineLayout.DayMark;
import limberboard.print.drawing.TimeLineLayout.Placed;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Season;

/** Writes a placed time line as SVG. For one drawing, on one thread. */
final class TimeLineSvg {
  private static final String INK = "#16324f";
  private static final String THIN = "#5b7389";
  private static final String PAPER = "#ffffff";
  private static final String AFLOAT = "#dfeaf0";
  private static final double BASELINE = 0.95;

  private final TimeLineLayout placed;
  private final TimeLineStyle style;
  private final Markup out = new Markup();

  TimeLineSvg(TimeLineLayout placed, TimeLineStyle style) {
    this.placed = placed;
    this.style = style;
  }

  /** The drawing. */
  String write(TimeLine line) {
    String w = number(style.width());
    String h = number(placed.height());
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
    out.plainElement("title", "Upkeep of " + line.boat() + " over the coming seasons").line();
    rectangle(new Area(0, 0, style.width(), placed.height()), PAPER, "none");
    placed.areas().forEach(area -> rectangle(area, AFLOAT, "none"));
    placed.rules().forEach(y -> rule(0, y, style.width(), y, "0.5"));
    rule(0, placed.headBottom(), style.width(), placed.headBottom(), "1.2");
    for (Season season : line.seasons()) {
      double x = placed.x(season.to());
      if (x < style.width() - 1) {
        rule(x, 0, x, placed.height(), "0.8");
      }
    }
    double today = placed.x(line.on());
    rule(today, placed.headBottom(), today, placed.height(), "0.8");
    placed.bars().forEach(bar -> rectangle(bar, PAPER, INK));
    placed.marks().forEach(this::mark);
    placed.texts().forEach(this::text);
    return out.close("svg").line().toString();
  }

  private void mark(DayMark mark) {
    double r = style.size() * 0.36;
    if (mark.overdue()) {
      String corner =
          "M"
              + number(mark.x() - r)
              + ","
              + number(mark.y() - r * 1.2)
              + " L"
              + number(mark.x() + r * 1.3)
              + ","
              + number(mark.y())
              + " L"
              + number(mark.x() - r)
              + ","
              + number(mark.y() + r * 1.2)
              + " z";
      out.empty("path", "d", corner, "fill", INK, "class", "overdue").line();
    } else {
      out.empty(
              "circle",
              "cx",
              number(mark.x()),
              "cy",
              number(mark.y()),
              "r",
              number(r),
              "fill",
              INK,
              "class",
              "planned")
          .line();
    }
  }

  private void rectangle(Area area, String fill, String stroke) {
    out.empty(
            "rect",
            "x",
            number(area.x()),
            "y",
            number(area.y()),
            "width",
            number(area.width()),
            "height",
            number(area.height()),
            "fill",
            fill,
            "stroke",
            stroke)
        .line();
  }

  private void rule(double x1, double y1, double x2, double y2, String strength) {
    out.empty(
            "line",
            "x1",
            number(x1),
            "y1",
            number(y1),
            "x2",
            number(x2),
            "y2",
            number(y2),
            "stroke",
            THIN,
            "stroke-width",
            strength)
        .line();
  }

  private void text(Placed text) {
    out.plainElement(
            "text",
            text.line().text(),
            "x",
            number(text.x()),
            "y",
            number(text.y() + text.line().size() * BASELINE),
            "font-size",
            number(text.line().size()),
            "font-weight",
            text.line().bold() ? "bold" : "normal",
            "fill",
            INK)
        .line();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
