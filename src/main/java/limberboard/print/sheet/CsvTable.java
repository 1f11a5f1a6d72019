package limberboard.print.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import limberboard.library.file.CsvText;

/**
 * A table for other programs as CSV (RFC 4180) with a head line, lines ended by CR LF. A text that
 * a spreadsheet would take for a formula, because it begins with {@code =}, {@code +}, {@code -},
 * {@code @}, a tab or a carriage return, gets an apostrophe before it; numbers stay numbers. For
 * one thread.
 */
public final class CsvTable {
  private static final String FORMULA = "=+-@\t\r";
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

  private final StringBuilder text = new StringBuilder();

  /** A table with these columns. */
  public CsvTable(String... columns) {
    row(Arrays.asList(columns));
  }

  /** Adds a row. */
  public void row(Object... cells) {
    row(Arrays.asList(cells));
  }

  /** Adds a row. */
  public void row(List<?> cells) {
    text.append(CsvText.line(cells.stream().map(CsvTable::harmless).toList())).append("\r\n");
  }

  /** What stands in a cell. */
  private static String harmless(Object cell) {
    boolean formula =
        cell instanceof CharSequence text
            && !text.isEmpty()
            && FORMULA.indexOf(text.charAt(0)) >= 0
            && !NUMBER.matcher(text).matches();
    return formula ? "'" + cell : cell.toString();
  }

  /** The whole table. */
  public String text() {
    return text.toString();
  }
}
