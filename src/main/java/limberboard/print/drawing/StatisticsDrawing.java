package limberboard.print.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import limberboard.cases.CaseStatistics;
import limberboard.cases.CaseStatistics.By;
import limberboard.cases.CaseStatistics.Row;
import limberboard.cases.StatisticsWords;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.words.CountWords;
import limberboard.words.Minutes;

/**
 * The recorded cases as one drawing: for each system, model and frequent cause a line with one bar
 * a season, all on the same scale within a part, its count and the median of what it took; below,
 * what comes up. For one drawing, on one thread.
 */
public final class StatisticsDrawing {
  private static final double WIDTH = 900;
  private static final double EDGE = 28;
  private static final double NAME = 330;
  private static final double BARS = 640;
  private static final double ROW = 34;
  private static final double COST = 800;
  private static final double TALLEST = 24;
  private static final double SMALL = 12;
  private static final double NORMAL = 14;
  private static final double LARGE = 22;
  private static final double GAP = 5;
  private static final int MOST_CAUSES = 10;
  private static final String BAR = "#2f7f79";

  private final CaseStatistics statistics;
  private final List<Naming> parts;
  private SvgPen pen;
  private double y;

  /** A part of the drawing. */
  private record Naming(String title, List<Row> rows) {}

  private final StatisticsWords names;

  /** A drawing of statistics in which there is at least one case. */
  public StatisticsDrawing(CaseStatistics statistics, StatisticsWords names) {
    this.statistics = statistics;
    this.names = names;
    this.parts =
        List.of(
            new Naming("By system", statistics.by(By.SYSTEM)),
            new Naming("By model", statistics.by(By.MODEL)),
            new Naming(
                "The most frequent causes",
                statistics.by(By.CAUSE).stream().limit(MOST_CAUSES).toList()));
  }

  /** The drawing as SVG. */
  public String svg() {
    double height = draw(1);
    draw(height);
    return pen.finish();
  }

  private double draw(double height) {
    pen = new SvgPen("Recorded cases", WIDTH, height);
    y = EDGE;
    text(CountWords.of(statistics.cases(), "recorded case"), LARGE, true, EDGE, WIDTH - 2 * EDGE);
    y += GAP;
    text(
        "One bar a season, "
            + statistics.seasons().get(0)
            + " to "
            + statistics.seasons().get(statistics.seasons().size() - 1)
            + "; beside it how many cases the medians of the time they took and of what they cost,"
            + " where cases say so.",
        SMALL,
        false,
        EDGE,
        WIDTH - 2 * EDGE);
    parts.forEach(this::part);
    rising();
    return y + EDGE;
  }

  private void part(Naming part) {
    y += ROW / 2;
    text(part.title(), NORMAL, true, EDGE, WIDTH - 2 * EDGE);
    rule(y + GAP / 2, 1.2);
    y += GAP;
    int most =
        part.rows().stream()
            .flatMap(row -> row.seasons().values().stream())
            .mapToInt(Integer::intValue)
            .max()
            .orElse(1);
    part.rows().forEach(row -> row(row, most));
  }

  private void row(Row row, int most) {
    List<Line> name = Line.wrap(names.of(row), SMALL, false, NAME - EDGE);
    double high = name.stream().mapToDouble(Line::height).sum();
    double height = Math.max(ROW, high + GAP);
    pen.group(
        () -> {
          pen.lines(name, EDGE, y + (height - high) / 2);
          bars(row, most, y + height - GAP);
          Line count = new Line(Integer.toString(row.cases()), NORMAL, true);
          double middle = y + (height - count.height()) / 2;
          pen.lines(List.of(count), BARS + ROW - count.width(), middle);
          pen.lines(
              List.of(new Line(took(row.minutes().median()), SMALL, false)),
              BARS + ROW + 2 * GAP,
              middle);
          pen.lines(List.of(new Line(cost(row.cost().median()), SMALL, false)), COST, middle);
        });
    y += height;
    rule(y, 0.4);
  }

  private void bars(Row row, int most, double bottom) {
    int n = statistics.seasons().size();
    double room = (BARS - EDGE - NAME) / n;
    for (int i = 0; i < n; i++) {
      double x = NAME + EDGE / 2 + i * room;
      double tall = TALLEST * row.in(statistics.seasons().get(i)) / most;
      if (tall > 0) {
        pen.shape(new Rectangle2D.Double(x, bottom - tall, room - GAP, tall), BAR, SvgPen.NONE, 0);
      }
      pen.shape(
          new Line2D.Double(x, bottom, x + room - GAP, bottom), SvgPen.NONE, SvgPen.THIN, 0.6);
    }
  }

  private static String cost(OptionalDouble money) {
    return money.isPresent() ? "cost " + Math.round(money.getAsDouble()) : "";
  }

  private static String took(OptionalDouble minutes) {
    return minutes.isPresent() ? Minutes.words(minutes.getAsDouble()) : "";
  }

  private void rising() {
    if (statistics.rising().isEmpty()) {
      return;
    }
    y += ROW / 2;
    text("What comes up, to tell owners before it happens", NORMAL, true, EDGE, WIDTH - 2 * EDGE);
    rule(y + GAP / 2, 1.2);
    y += 2 * GAP;
    statistics
        .rising()
        .forEach(
            each -> {
              text(names.of(each), SMALL, false, EDGE, WIDTH - 2 * EDGE);
              y += GAP;
            });
  }

  private void text(String text, double size, boolean bold, double x, double room) {
    y = pen.lines(Line.wrap(text, size, bold, room), x, y);
  }

  private void rule(double at, double strength) {
    pen.shape(new Line2D.Double(EDGE, at, WIDTH - EDGE, at), SvgPen.NONE, SvgPen.THIN, strength);
  }
}
