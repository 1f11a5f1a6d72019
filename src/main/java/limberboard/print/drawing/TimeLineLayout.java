package limberboard.print.drawing;

import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import limberboard.print.drawing.DrawnBox.Line;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Group;
import limberboard.upkeep.TimeLine.Row;
import limberboard.upkeep.TimeLine.Run;
import limberboard.upkeep.TimeLine.Season;
import limberboard.words.DayWords;
import limberboard.words.Minutes;

/** Places the parts of a time line on one sheet. For one sheet, on one thread. */
final class TimeLineLayout {
  private static final double PAD = 4;
  private static final double LEAST_RUN = 8;

  private final TimeLine line;
  private final TimeLineStyle style;
  private final List<Placed> texts = new ArrayList<>();
  private final List<Rectangle2D> areas = new ArrayList<>();
  private final List<DayMark> marks = new ArrayList<>();
  private final List<Rectangle2D> bars = new ArrayList<>();
  private final List<Double> rules = new ArrayList<>();
  private double bottom;
  private double headBottom;

  /**
   * A line of text from its upper left corner.
   *
   * @param line the text
   * @param x left edge
   * @param y upper edge
   */
  record Placed(Line line, double x, double y) {}

  /**
   * A day on which work is planned.
   *
   * @param x its middle
   * @param y its middle
   * @param overdue whether the work is overdue
   */
  record DayMark(double x, double y, boolean overdue) {}

  /** How high a row is. */
  static double height(Row row, TimeLineStyle style) {
    int lines = Math.max(title(row, style).size(), note(row, style).size());
    return lines * lineHeight(style) + PAD;
  }

  /** How high the heading of a group is. */
  static double groupHeight(TimeLineStyle style) {
    return lineHeight(style) + 2 * PAD;
  }

  /** How high the head of a sheet is. */
  static double headHeight(TimeLineStyle style) {
    return 4 * lineHeight(style) + 3 * PAD;
  }

  private static double lineHeight(TimeLineStyle style) {
    return new Line("", style.size(), false).height();
  }

  private static List<Line> title(Row row, TimeLineStyle style) {
    return Line.wrap(row.title(), style.size(), false, style.title() - 2 * PAD);
  }

  private static List<Line> note(Row row, TimeLineStyle style) {
    return Line.wrap(row.note(), style.small(), true, style.note() - 2 * PAD);
  }

  /** Places a time line of which only these groups are on the sheet. */
  TimeLineLayout(TimeLine line, List<Group> groups, TimeLineStyle style) {
    this.line = line;
    this.style = style;
    head();
    double y = headBottom;
    for (Group group : groups) {
      y = group(group, y);
    }
    bottom = y + PAD;
    line.seasons().forEach(this::afloat);
  }

  /** Adds the cautions of all the work below the rows. */
  TimeLineLayout withCautions() {
    if (!line.cautions().isEmpty()) {
      rules.add(bottom);
      bottom += PAD;
      double room = style.width() - 2 * PAD;
      bottom = column(Line.wrap(cautions(), style.size(), false, room), PAD, bottom) + PAD;
    }
    return this;
  }

  private String cautions() {
    return "Cautions of this work: "
        + String.join("; ", line.cautions())
        + ". Each page says what to do before its steps.";
  }

  private void head() {
    for (Season season : line.seasons()) {
      double from = Math.max(style.axis(), x(season.from()));
      double room = x(season.to()) - from - PAD;
      double y = PAD;
      y = inside("Season " + season.season().label(), season.season().label(), from, room, y, true);
      String time = Minutes.words(season.minutes());
      y = inside("Work: " + time, time, from, room, y, false);
      headWords(season, y);
    }
    headBottom = headHeight(style);
  }

  private void headWords(Season season, double y) {
    double from = Math.max(style.axis(), x(season.season().from()));
    double room = x(season.season().to()) - from - PAD;
    if (room > 0) {
      double next = inside("afloat", "", from, room, y, false);
      String launched = DayWords.withoutYear(season.season().from());
      inside(launched, "", from, room, next, false);
      haulOut(season, from + PAD + width(launched), next);
    }
    double ashore = Math.max(style.axis(), x(season.from()));
    double until = x(season.season().from());
    if (until > ashore) {
      inside("ashore", "", ashore, until - ashore - PAD, y, false);
    }
  }

  /** The day of the haul-out at the end of the season, where there is room for it too. */
  private void haulOut(Season season, double taken, double y) {
    String words = DayWords.withoutYear(season.season().to());
    double x = x(season.season().to()) - PAD - width(words);
    if (x > taken + 2 * PAD) {
      texts.add(new Placed(new Line(words, style.small(), false), x, y));
    }
  }

  private double width(String words) {
    return new Line(words, style.small(), false).width();
  }

  /** Puts words, or else fewer of them, where there is room. */
  private double inside(
      String most, String fewer, double from, double room, double y, boolean bold) {
    double size = bold ? style.size() : style.small();
    for (String text : List.of(most, fewer)) {
      Line words = new Line(text, size, bold);
      if (!text.isEmpty() && words.width() <= room - PAD) {
        texts.add(new Placed(words, from + PAD, y));
        break;
      }
    }
    return y + lineHeight(style);
  }

  private double group(Group group, double top) {
    double y = top + PAD;
    texts.add(new Placed(new Line(group.title(), style.size(), true), PAD, y));
    y += lineHeight(style) + PAD;
    for (Row row : group.rows()) {
      rules.add(y);
      y = row(row, y);
    }
    return y;
  }

  private double row(Row row, double top) {
    column(title(row, style), PAD, top + PAD / 2);
    column(note(row, style), style.title() + PAD, top + PAD / 2);
    double middle = top + (lineHeight(style) + PAD) / 2;
    row.days()
        .forEach(
            day ->
                marks.add(new DayMark(x(day), middle, row.overdue() && !day.isAfter(line.on()))));
    row.runs().forEach(run -> bars.add(bar(run, middle)));
    return top + height(row, style);
  }

  /** Puts lines below one another and says where they end. */
  private double column(List<Line> lines, double x, double top) {
    double y = top;
    for (Line text : lines) {
      texts.add(new Placed(text, x, y));
      y += lineHeight(style);
    }
    return y;
  }

  private Rectangle2D bar(Run run, double middle) {
    double half = style.size() * 0.32;
    double from = x(run.from());
    double width = Math.max(LEAST_RUN, x(run.to()) - from);
    return new Rectangle2D.Double(
        Math.min(from, style.width() - width), middle - half, width, 2 * half);
  }

  private void afloat(Season season) {
    double from = Math.max(style.axis(), x(season.season().from()));
    double to = Math.min(style.width(), x(season.season().to()));
    if (to > from) {
      double top = headHeight(style) - 2 * lineHeight(style) - 2 * PAD;
      areas.add(new Rectangle2D.Double(from, top, to - from, bottom - top));
    }
  }

  /** Where a day lies on the axis. */
  double x(LocalDate day) {
    double all = ChronoUnit.DAYS.between(line.from(), line.to());
    double gone = ChronoUnit.DAYS.between(line.from(), day);
    double edge = style.size() / 2;
    return style.axis() + edge + (style.width() - style.axis() - 2 * edge) * gone / all;
  }

  List<Placed> texts() {
    return List.copyOf(texts);
  }

  /** The times afloat. */
  List<Rectangle2D> areas() {
    return List.copyOf(areas);
  }

  List<DayMark> marks() {
    return List.copyOf(marks);
  }

  /** What comes often. */
  List<Rectangle2D> bars() {
    return List.copyOf(bars);
  }

  /** Hairlines above the rows. */
  List<Double> rules() {
    return List.copyOf(rules);
  }

  /** Where the rows begin. */
  double headBottom() {
    return headBottom;
  }

  double height() {
    return bottom;
  }
}
