package limberboard.boat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.Problem;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The lines of a CSV file (RFC 4180) that can be used; what cannot is reported with its line.
 *
 * @param lines the lines that have as many fields as the header
 * @param problems what is wrong
 */
record CsvLines(List<Line> lines, List<Problem> problems) {
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  /**
   * One line.
   *
   * @param number the line of the file on which it ends, from 1
   * @param fields its fields
   */
  record Line(int number, CSVRecord fields) {
    /** A field without blanks around it. */
    String get(String column) {
      return fields.get(column).strip();
    }
  }

  /** Reads a text whose header must have these columns. */
  static CsvLines read(String file, String text, List<String> columns) {
    List<Line> lines = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (String column : columns) {
        if (!parser.getHeaderMap().containsKey(column)) {
          String right = "begin with " + String.join(",", columns);
          problems.add(Problem.error(file, 1, column, "has no such column", right));
          return new CsvLines(lines, problems);
        }
      }
      for (CSVRecord fields : parser) {
        Line line = new Line((int) parser.getCurrentLineNumber(), fields);
        if (fields.isConsistent()) {
          lines.add(line);
        } else {
          problems.add(uneven(file, line));
        }
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      problems.add(unreadable(file, e));
    }
    return new CsvLines(lines, problems);
  }

  private static Problem uneven(String file, Line line) {
    return Problem.error(
        file,
        line.number(),
        "",
        "has " + line.fields().size() + " fields, not as many as the first line",
        "put text that holds a comma in double quotes");
  }

  private static Problem unreadable(String file, Exception e) {
    return Problem.error(
        file,
        0,
        "",
        "cannot be read further as CSV: " + e.getMessage(),
        "put text that holds a comma or a quote in double quotes, and double the quotes");
  }
}
