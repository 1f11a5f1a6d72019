package limberboard.boat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import limberboard.library.problem.Problem;

/**
 * The lines of a CSV file (RFC 4180) that can be used; what cannot is reported with its line.
 *
 * @param lines the lines that have as many fields as the header
 * @param problems what is wrong
 */
record CsvLines(List<Line> lines, List<Problem> problems) {
  /**
   * One line.
   *
   * @param number the line of the file on which it ends, from 1
   * @param columns the names of its fields
   * @param fields its fields
   */
  record Line(int number, List<String> columns, List<String> fields) {
    /** A field without blanks around it. */
    String get(String column) {
      return fields.get(columns.indexOf(column)).strip();
    }
  }

  /** Reads a text whose header must have these columns. */
  static CsvLines read(String file, String text, List<String> columns) {
    List<Line> lines = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    CsvText csv = CsvText.read(text);
    List<String> header = csv.rows().isEmpty() ? List.of() : csv.rows().get(0).cells();
    for (String column : columns) {
      if (!header.contains(column)) {
        String right = "begin with " + String.join(",", columns);
        problems.add(Problem.error(file, 1, column, "has no such column", right));
        return new CsvLines(lines, problems);
      }
    }
    if (new HashSet<>(header).size() < header.size()) {
      String right = "keep one of them";
      problems.add(Problem.error(file, 1, "", "has two columns of one name", right));
      return new CsvLines(lines, problems);
    }
    csv.rows().stream()
        .skip(1)
        .map(row -> new Line(row.line(), header, row.cells()))
        .forEach(
            line -> {
              if (line.fields().size() == header.size()) {
                lines.add(line);
              } else {
                problems.add(uneven(file, line));
              }
            });
    csv.brokenFrom().ifPresent(from -> problems.add(unreadable(file, from)));
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

  private static Problem unreadable(String file, int line) {
    return Problem.error(
        file,
        line,
        "",
        "cannot be read from here on, so that nothing from this line to the end is counted",
        "put text that holds a comma or a quote in double quotes, and double the quotes");
  }
}
