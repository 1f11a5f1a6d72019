package limberboard.print.drawing;

import java.util.ArrayList;
import java.util.List;
import limberboard.upkeep.TimeLine;
import limberboard.upkeep.TimeLine.Group;
import limberboard.upkeep.TimeLine.Row;

/**
 * Draws a time line as SVG: the seasons side by side, one row for each piece of work, a mark where
 * it is planned, a bar where it comes often. Times afloat are shaded and named; what is overdue is
 * said in words, so that the drawing can be read in black and white. Stateless.
 */
public final class TimeLineDrawing {
  private TimeLineDrawing() {}

  /**
   * The whole time line as one drawing, for a screen or to be printed by itself, with the cautions
   * of its work below it.
   */
  public static String whole(TimeLine line) {
    TimeLineStyle style = TimeLineStyle.WIDE;
    TimeLineLayout placed = new TimeLineLayout(line, line.groups(), style).withCautions();
    return new TimeLineSvg(line, placed, style).write();
  }

  /** How high the head of the whole drawing is, with the seasons' names and totals. */
  public static double headHeight() {
    return TimeLineLayout.headHeight(TimeLineStyle.WIDE);
  }

  /**
   * The time line in drawings that each fit upright on a sheet of A4, with the seasons on each.
   *
   * @param taken how much of the first sheet's height is taken
   */
  public static List<String> sheets(TimeLine line, double taken) {
    TimeLineStyle style = TimeLineStyle.PAPER;
    return divided(line, style, taken).stream()
        .map(
            groups -> new TimeLineSvg(line, new TimeLineLayout(line, groups, style), style).write())
        .toList();
  }

  /** What stands on each sheet. A group that goes over the end of a sheet goes on on the next. */
  static List<List<Group>> divided(TimeLine line, TimeLineStyle style, double taken) {
    double room = TreeDrawing.PAPER_HEIGHT - TimeLineLayout.headHeight(style) - style.size();
    List<List<Group>> sheets = new ArrayList<>();
    List<Group> sheet = new ArrayList<>();
    double used = taken;
    boolean fresh = true;
    for (Group group : line.groups()) {
      List<Row> rows = new ArrayList<>();
      double heading = TimeLineLayout.groupHeight(style);
      for (Row row : group.rows()) {
        double more = TimeLineLayout.height(row, style) + (rows.isEmpty() ? heading : 0);
        if (used + more > room && !fresh) {
          close(group, rows, sheet);
          sheets.add(List.copyOf(sheet));
          sheet.clear();
          rows.clear();
          used = 0;
          more = TimeLineLayout.height(row, style) + heading;
        }
        rows.add(row);
        used += more;
        fresh = false;
      }
      close(group, rows, sheet);
    }
    if (!sheet.isEmpty()) {
      sheets.add(List.copyOf(sheet));
    }
    return List.copyOf(sheets);
  }

  private static void close(Group group, List<Row> rows, List<Group> sheet) {
    if (!rows.isEmpty()) {
      sheet.add(new Group(group.title(), rows));
    }
  }
}
