package limberboard.sharing.merge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.file.CsvText;

/**
 * Merges tables such as a boat's log: what either side wrote is kept, what one side took out is
 * out. A line that both changed stands in both forms, so that nothing is lost and nothing is open.
 * Columns that either side added are both there; lines that both put in at one place stand in the
 * order of their first column where they were in that order.
 */
final class TableMerge {
  private final List<String> columns;

  /** Rows as they were written, by what they say. */
  private final Map<String, String> written = new HashMap<>();

  private TableMerge(List<String> columns) {
    this.columns = columns;
  }

  /** The table; empty when one of the three cannot be read, or one has a column twice. */
  static Optional<String> merge(String before, String one, String other) {
    CsvText base = CsvText.read(before);
    CsvText ours = CsvText.read(one);
    CsvText theirs = CsvText.read(other);
    if (!isSound(base) || !isSound(ours) || !isSound(theirs)) {
      return Optional.empty();
    }
    List<String> columns = new ArrayList<>(ours.columns());
    theirs.columns().stream().filter(name -> !columns.contains(name)).forEach(columns::add);
    TableMerge merge = new TableMerge(columns);
    List<String> rows = merge.rows(base, before);
    List<String> result =
        union(ThreeWay.merge(rows, merge.rows(ours, one), merge.rows(theirs, other), true));
    String end = one.contains("\r\n") ? "\r\n" : "\n";
    StringBuilder text = new StringBuilder(one.startsWith("\uFEFF") ? "\uFEFF" : "");
    text.append(CsvText.line(columns)).append(end);
    result.forEach(row -> text.append(merge.written.getOrDefault(row, row)).append(end));
    return Optional.of(text.toString());
  }

  private static boolean isSound(CsvText csv) {
    List<String> columns = csv.columns();
    return csv.brokenFrom().isEmpty()
        && new HashSet<>(columns).size() == columns.size()
        && csv.lines().stream().allMatch(row -> row.cells().size() <= columns.size());
  }

  /** What the rows say, in the columns of the result. */
  private List<String> rows(CsvText csv, String text) {
    boolean same =
        columns.subList(0, Math.min(columns.size(), csv.columns().size())).equals(csv.columns());
    List<String> rows = new ArrayList<>();
    for (CsvText.Row row : csv.lines()) {
      List<String> cells = new ArrayList<>();
      for (String column : columns) {
        int at = csv.columns().indexOf(column);
        cells.add(at >= 0 && at < row.cells().size() ? row.cells().get(at) : "");
      }
      String said = CsvText.line(cells);
      if (same) {
        written.putIfAbsent(said, text.substring(row.from(), row.to()));
      }
      rows.add(said);
    }
    return rows;
  }

  private static List<String> union(List<ThreeWay.Part> parts) {
    List<String> rows = new ArrayList<>();
    for (ThreeWay.Part part : parts) {
      if (part instanceof ThreeWay.Agreed agreed) {
        rows.addAll(agreed.texts());
      } else if (part instanceof ThreeWay.Disputed disputed) {
        List<String> ours = new ArrayList<>(disputed.ours());
        ours.removeIf(row -> disputed.base().contains(row) && !disputed.theirs().contains(row));
        List<String> theirs = new ArrayList<>(disputed.theirs());
        theirs.removeIf(row -> disputed.base().contains(row) || disputed.ours().contains(row));
        rows.addAll(inOrder(ours, theirs));
      }
    }
    return rows;
  }

  private static List<String> inOrder(List<String> ours, List<String> theirs) {
    if (!isInOrder(ours) || !isInOrder(theirs)) {
      List<String> both = new ArrayList<>(ours);
      both.addAll(theirs);
      return both;
    }
    List<String> rows = new ArrayList<>();
    int next = 0;
    for (String row : ours) {
      while (next < theirs.size() && first(theirs.get(next)).compareTo(first(row)) < 0) {
        rows.add(theirs.get(next++));
      }
      rows.add(row);
    }
    rows.addAll(theirs.subList(next, theirs.size()));
    return rows;
  }

  private static boolean isInOrder(List<String> rows) {
    for (int i = 1; i < rows.size(); i++) {
      if (first(rows.get(i - 1)).compareTo(first(rows.get(i))) > 0) {
        return false;
      }
    }
    return true;
  }

  private static String first(String row) {
    int comma = row.indexOf(',');
    return comma < 0 ? row : row.substring(0, comma);
  }
}
