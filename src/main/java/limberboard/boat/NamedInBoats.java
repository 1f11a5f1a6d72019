package limberboard.boat;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.file.CsvText;
import limberboard.library.header.HeaderName;
import limberboard.library.value.Named;

/** The names of pages in the files of boats and in cases. */
public final class NamedInBoats {
  private NamedInBoats() {}

  /**
   * All names in a file; none when nothing of the program reads a file of that name.
   *
   * @param file the file's name: {@code boat.yaml}, {@code log.csv}, {@code stock.csv}
   * @param text its text
   */
  public static List<HeaderName> of(String file, String text) {
    return switch (file) {
      case BoatReader.BOAT -> HeaderName.of(BoatFile.class, text);
      case BoatReader.LOG -> column(text, List.of(LogWords.WORK, LogWords.OF), Named.PROCEDURE);
      case StockReader.STOCK -> column(text, List.of("material"), Named.MATERIAL);
      default -> List.of();
    };
  }

  /** All names in a case. */
  public static List<HeaderName> ofCase(String text) {
    return HeaderName.of(CaseFile.class, text);
  }

  private static List<HeaderName> column(String text, List<String> columns, Named named) {
    CsvText csv = CsvText.read(text);
    List<HeaderName> found = new ArrayList<>();
    for (CsvText.Row row : csv.lines()) {
      List<int[]> cells = cells(text, row);
      for (int i = 0; i < Math.min(cells.size(), row.cells().size()); i++) {
        if (i < csv.columns().size() && columns.contains(csv.columns().get(i))) {
          int[] cell = cells.get(i);
          String name = row.cells().get(i).strip();
          found.add(new HeaderName(named, name, cell[0], cell[1], row.line() - 1));
        }
      }
    }
    return found;
  }

  /** Where the cells of a row stand, with their quotes. */
  private static List<int[]> cells(String text, CsvText.Row row) {
    List<int[]> cells = new ArrayList<>();
    boolean quoted = false;
    int from = row.from();
    for (int i = row.from(); i < row.to(); i++) {
      if (text.charAt(i) == '"') {
        quoted = !quoted;
      } else if (text.charAt(i) == ',' && !quoted) {
        cells.add(new int[] {from, i});
        from = i + 1;
      }
    }
    cells.add(new int[] {from, row.to()});
    return cells;
  }
}
