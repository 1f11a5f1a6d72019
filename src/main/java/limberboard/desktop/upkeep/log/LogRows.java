package limberboard.desktop.upkeep.log;

import java.util.List;
import javax.swing.table.AbstractTableModel;

/** Lines of a log as a table. */
final class LogRows extends AbstractTableModel {
  private static final List<String> COLUMNS =
      List.of("Day", "What was done", "Hours", "Counted", "Note");
  private transient List<LogRow> rows = List.of();

  /** Shows other lines; whether they are other ones. */
  boolean show(List<LogRow> shown) {
    boolean others = !shown.equals(rows);
    if (others) {
      rows = shown;
      fireTableDataChanged();
    }
    return others;
  }

  /** Whether anything was counted. */
  boolean hasCounts() {
    return rows.stream().anyMatch(row -> !row.counted().isEmpty());
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return COLUMNS.size();
  }

  @Override
  public String getColumnName(int column) {
    return COLUMNS.get(column);
  }

  @Override
  public String getValueAt(int line, int column) {
    LogRow row = rows.get(line);
    return switch (column) {
      case 0 -> row.day();
      case 1 -> row.work();
      case 2 -> row.hours();
      case 3 -> row.counted();
      default -> row.note();
    };
  }
}
