package limberboard.rooms;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Rooms in rows, each above all that it needs. An arrow that passes a row keeps a lane of its own
 * there, so that it runs beside the rooms and not behind them. The same rooms always give the same
 * picture.
 */
final class RoomsPicture {
  private static final double WIDTH = 214;
  private static final double HEIGHT = 74;
  private static final double LANE = 14;
  private static final double GAP = 22;
  private static final double RISE = 56;
  private static final int SWEEPS = 24;
  private static final int LETTERS = 33;
  private static final int LINES = 3;

  private final Rooms rooms;
  private final List<List<Stop>> rows = new ArrayList<>();
  private final List<List<Stop>> ways = new ArrayList<>();

  /** A room in its row, or an arrow's lane through a row. */
  private static final class Stop {
    private final String room;
    private final boolean isLane;
    private final List<Stop> above = new ArrayList<>();
    private final List<Stop> below = new ArrayList<>();
    private double x;

    Stop(String room, boolean isLane) {
      this.room = room;
      this.isLane = isLane;
    }

    double width() {
      return isLane ? LANE : WIDTH;
    }
  }

  private RoomsPicture(Rooms rooms) {
    this.rooms = rooms;
  }

  /** As SVG. */
  static String of(Rooms rooms) throws IOException {
    RoomsPicture picture = new RoomsPicture(rooms);
    picture.place();
    return picture.drawn();
  }

  private int height(String room, Map<String, Integer> known) {
    Integer there = known.get(room);
    if (there == null) {
      there =
          rooms.needs().getOrDefault(room, Set.of()).stream()
              .mapToInt(below -> height(below, known) + 1)
              .max()
              .orElse(0);
      known.put(room, there);
    }
    return there;
  }

  private void place() {
    Map<String, Integer> heights = new HashMap<>();
    rooms.needs().keySet().forEach(room -> height(room, heights));
    int top = heights.values().stream().mapToInt(h -> h).max().orElse(0);
    for (int i = 0; i <= top; i++) {
      rows.add(new ArrayList<>());
    }
    Map<String, Stop> stops = new HashMap<>();
    for (String room : rooms.needs().keySet()) {
      Stop stop = new Stop(room, false);
      stops.put(room, stop);
      rows.get(top - heights.get(room)).add(stop);
    }
    rooms
        .needs()
        .forEach(
            (from, to) ->
                to.forEach(
                    below -> {
                      List<Stop> way = new ArrayList<>(List.of(stops.get(from)));
                      for (int h = heights.get(from) - 1; h > heights.get(below); h--) {
                        Stop lane = new Stop("", true);
                        rows.get(top - h).add(lane);
                        way.add(lane);
                      }
                      way.add(stops.get(below));
                      ways.add(way);
                    }));
    for (List<Stop> way : ways) {
      for (int i = 1; i < way.size(); i++) {
        way.get(i - 1).below.add(way.get(i));
        way.get(i).above.add(way.get(i - 1));
      }
    }
    order();
  }

  private void order() {
    rows.forEach(RoomsPicture::spread);
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      boolean down = sweep % 2 == 0;
      for (int i = 0; i < rows.size(); i++) {
        List<Stop> row = rows.get(down ? i : rows.size() - 1 - i);
        Map<Stop, Double> wish = new HashMap<>();
        for (Stop stop : row) {
          List<Stop> near = down ? stop.above : stop.below;
          wish.put(stop, near.stream().mapToDouble(each -> each.x).average().orElse(stop.x));
        }
        row.sort(Comparator.comparing(wish::get));
        spread(row);
      }
    }
  }

  /** Side by side, their middle at 0. */
  private static void spread(List<Stop> row) {
    double wide = -GAP;
    for (Stop stop : row) {
      wide += stop.width() + GAP;
    }
    double x = -wide / 2;
    for (Stop stop : row) {
      stop.x = x + stop.width() / 2;
      x += stop.width() + GAP;
    }
  }

  private String drawn() throws IOException {
    double half = 0;
    for (List<Stop> row : rows) {
      Stop last = row.get(row.size() - 1);
      half = Math.max(half, last.x + last.width() / 2);
    }
    double width = 2 * (half + GAP);
    double height = rows.size() * (HEIGHT + RISE) - RISE + 2 * GAP;
    StringBuilder svg = new StringBuilder();
    add(
        svg,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%.0f 0 %.0f %.0f\" width=\"%.0f\""
            + " height=\"%.0f\" font-family=\"Inter, sans-serif\">",
        -width / 2,
        width,
        height,
        width,
        height);
    add(svg, "<title>The packages of %s and what each needs</title>", rooms.within());
    add(
        svg,
        "<rect x=\"%.0f\" width=\"%.0f\" height=\"%.0f\" fill=\"#ffffff\"/>",
        -width / 2,
        width,
        height);
    add(
        svg,
        "<marker id=\"tip\" viewBox=\"0 0 8 8\" refX=\"7\" refY=\"4\" markerWidth=\"7\""
            + " markerHeight=\"7\" orient=\"auto\"><path d=\"M0 0L8 4L0 8z\""
            + " fill=\"#4a6274\"/></marker>");
    for (List<Stop> way : ways) {
      arrow(svg, way);
    }
    for (int i = 0; i < rows.size(); i++) {
      for (Stop stop : rows.get(i)) {
        if (!stop.isLane) {
          box(svg, stop, top(i));
        }
      }
    }
    return svg.append("</svg>\n").toString();
  }

  private static double top(int row) {
    return GAP + row * (HEIGHT + RISE);
  }

  private void arrow(StringBuilder svg, List<Stop> way) {
    StringBuilder path = new StringBuilder();
    int row = rows.indexOf(rowOf(way.get(0)));
    for (int i = 0; i < way.size(); i++) {
      Stop stop = way.get(i);
      double top = top(row + i);
      if (i == 0) {
        path.append(String.format(Locale.ROOT, "M%.1f %.1f", stop.x, top + HEIGHT));
        continue;
      }
      double from = top - RISE;
      path.append(
          String.format(
              Locale.ROOT,
              "C%.1f %.1f %.1f %.1f %.1f %.1f",
              way.get(i - 1).x,
              from + RISE / 2,
              stop.x,
              top - RISE / 2,
              stop.x,
              top));
      if (stop.isLane) {
        path.append(String.format(Locale.ROOT, "V%.1f", top + HEIGHT));
      }
    }
    add(
        svg,
        "<path d=\"%s\" fill=\"none\" stroke=\"#4a6274\" stroke-width=\"1.2\""
            + " marker-end=\"url(#tip)\"/>",
        path);
  }

  private List<Stop> rowOf(Stop stop) {
    return rows.stream().filter(row -> row.contains(stop)).findFirst().orElseThrow();
  }

  private void box(StringBuilder svg, Stop stop, double y) throws IOException {
    add(
        svg,
        "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.0f\" height=\"%.0f\" rx=\"5\" fill=\"#eef4f7\""
            + " stroke=\"#4a6274\"/>",
        stop.x - WIDTH / 2,
        y,
        WIDTH,
        HEIGHT);
    add(
        svg,
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"15\""
            + " font-weight=\"600\" fill=\"#13242f\">%s</text>",
        stop.x,
        y + 20,
        rooms.title(stop.room));
    double line = y + 36;
    for (String text : broken(rooms.purpose(stop.room))) {
      add(
          svg,
          "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"11\""
              + " fill=\"#33434e\">%s</text>",
          stop.x,
          line,
          text.replace("&", "&amp;").replace("<", "&lt;"));
      line += 14;
    }
  }

  private static List<String> broken(String text) {
    List<String> lines = new ArrayList<>(List.of(""));
    for (String word : text.split(" ")) {
      String last = lines.get(lines.size() - 1);
      if (last.isEmpty()) {
        lines.set(lines.size() - 1, word);
      } else if (last.length() + 1 + word.length() <= LETTERS) {
        lines.set(lines.size() - 1, last + " " + word);
      } else if (lines.size() == LINES) {
        lines.set(lines.size() - 1, last + " …");
        return lines;
      } else {
        lines.add(word);
      }
    }
    return lines;
  }

  private static void add(StringBuilder svg, String format, Object... parts) {
    svg.append(String.format(Locale.ROOT, format, parts)).append('\n');
  }
}
