package limberboard.desktop.boats;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.swing.table.AbstractTableModel;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Days;

/** A boat's log as a table, the newest first. */
final class LogTable extends AbstractTableModel {
  private static final List<String> COLUMNS = List.of("Date", "Work", "Hours", "Counted", "Note");
  private final transient BoatFormModel model;
  private transient List<LogEntry> entries = List.of();

  LogTable(BoatFormModel model) {
    this.model = model;
  }

  void show(Boat boat) {
    entries = boat.log().stream().sorted(Comparator.comparing(LogEntry::date).reversed()).toList();
    fireTableDataChanged();
  }

  void clear() {
    entries = List.of();
    fireTableDataChanged();
  }

  /** Whether anything was counted. */
  boolean hasCounts() {
    return entries.stream().anyMatch(entry -> !entry.uses().isEmpty());
  }

  @Override
  public int getRowCount() {
    return entries.size();
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
  public Object getValueAt(int row, int column) {
    LogEntry entry = entries.get(row);
    return switch (column) {
      case 0 -> Days.written(entry.date());
      case 1 -> model.workTitle(entry.work());
      case 2 -> entry.engineHours().isPresent() ? hours(entry) : "";
      case 3 -> counted(entry.uses());
      default -> entry.note();
    };
  }

  private static String hours(LogEntry entry) {
    double hours = entry.engineHours().orElse(0);
    return hours == Math.rint(hours) ? Long.toString((long) hours) : Double.toString(hours);
  }

  private static String counted(Map<String, Integer> uses) {
    return uses.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(use -> use.getValue() + " " + use.getKey())
        .collect(Collectors.joining(", "));
  }
}
