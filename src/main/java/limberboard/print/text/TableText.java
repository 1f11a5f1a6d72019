package limberboard.print.text;

import java.util.ArrayList;
import java.util.List;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;

/**
 * Writes tables as aligned columns; where the columns would get too narrow, row by row with the
 * heads before the values. For one page, on one thread.
 */
final class TableText {
  private static final String BETWEEN = "  ";
  private static final int NARROWEST = 8;

  private final TextLines out;

  TableText(TextLines out) {
    this.out = out;
  }

  void table(Block.Table table) {
    List<String> head = texts(table.head());
    List<List<String>> rows = table.rows().stream().map(TableText::texts).toList();
    int columns = head.size();
    int room = out.room() - BETWEEN.length() * (columns - 1);
    if (columns == 0 || room / columns < NARROWEST) {
      rows.forEach(row -> listed(table, head, row));
    } else {
      List<List<String>> cells = rows.stream().filter(row -> !table.isHeading(row)).toList();
      int[] widths = widths(head, cells, room);
      row(head, widths, table.columns());
      List<String> rule = new ArrayList<>();
      for (int width : widths) {
        rule.add("-".repeat(width));
      }
      out.line(String.join(BETWEEN, rule));
      for (List<String> row : rows) {
        if (table.isHeading(row)) {
          out.wrapped(row.get(0));
        } else {
          row(row, widths, table.columns());
        }
      }
    }
    out.gap();
  }

  private static List<String> texts(List<List<Inline>> cells) {
    return cells.stream().map(cell -> InlineText.of(cell).strip()).toList();
  }

  /** Natural widths; while they are too wide together, the widest column gives way. */
  private static int[] widths(List<String> head, List<List<String>> rows, int room) {
    int[] widths = new int[head.size()];
    int sum = 0;
    for (int i = 0; i < widths.length; i++) {
      int column = i;
      int natural =
          rows.stream()
              .mapToInt(row -> longestLine(row.get(column)))
              .reduce(TextLines.length(head.get(i)), Math::max);
      widths[i] = Math.max(1, Math.min(natural, room));
      sum += widths[i];
    }
    while (sum > room) {
      int widest = 0;
      for (int i = 1; i < widths.length; i++) {
        widest = widths[i] > widths[widest] ? i : widest;
      }
      widths[widest]--;
      sum--;
    }
    return widths;
  }

  private void row(List<String> cells, int[] widths, List<Block.Side> sides) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < widths.length; i++) {
      wrapped.add(wrapped(cells.get(i), widths[i]));
      height = Math.max(height, wrapped.get(i).size());
    }
    for (int line = 0; line < height; line++) {
      List<String> parts = new ArrayList<>();
      for (int i = 0; i < widths.length; i++) {
        String part = line < wrapped.get(i).size() ? wrapped.get(i).get(line) : "";
        parts.add(set(part, widths[i], sides.get(i)));
      }
      out.line(String.join(BETWEEN, parts));
    }
  }

  private static int longestLine(String cell) {
    return cell.lines().mapToInt(TextLines::length).max().orElse(0);
  }

  private static List<String> wrapped(String cell, int width) {
    return cell.lines().flatMap(line -> TextLines.wrap(line, width).stream()).toList();
  }

  private static String set(String text, int width, Block.Side side) {
    int spare = Math.max(0, width - TextLines.length(text));
    int before =
        switch (side) {
          case LEFT -> 0;
          case CENTRE -> spare / 2;
          case RIGHT -> spare;
        };
    return " ".repeat(before) + text + " ".repeat(spare - before);
  }

  private void listed(Block.Table table, List<String> head, List<String> row) {
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        boolean bare = table.isHeading(row) || head.get(i).isEmpty();
        out.wrapped(bare ? row.get(i) : head.get(i) + ": " + row.get(i));
      }
    }
    out.gap();
  }
}
