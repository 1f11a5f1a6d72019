package limberboard.print.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

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
  private final CSVPrinter rows;

  /** A table with these columns. */
  public CsvTable(String... columns) {
    try {
      rows = new CSVPrinter(text, CSVFormat.RFC4180.builder().setHeader(columns).get());
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot be written", e);
    }
  }

  /** Adds a row. */
  public void row(Object... cells) {
    row(Arrays.asList(cells));
  }

  /** Adds a row. */
  public void row(List<?> cells) {
    try {
      rows.printRecord(cells.stream().map(CsvTable::harmless).toList());
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot be written", e);
    }
  }

  /** What stands in a cell. */
  private static Object harmless(Object cell) {
    boolean formula =
        cell instanceof CharSequence text
            && !text.isEmpty()
            && FORMULA.indexOf(text.charAt(0)) >= 0
            && !NUMBER.matcher(text).matches();
    return formula ? "'" + cell : cell;
  }

  /** The whole table. */
  public String text() {
    return text.toString();
  }
}
