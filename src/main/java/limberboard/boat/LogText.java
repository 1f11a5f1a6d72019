package limberboard.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import limberboard.library.file.CsvText;
import limberboard.library.file.CsvText.Row;
import limberboard.library.problem.Problem;

/**
 * The text of a log, read line by line.
 *
 * @param text the text, to the letter
 * @param csv what it says
 */
record LogText(String text, CsvText csv) {
  static final String NEW = String.join(",", LogWords.COLUMNS) + "\r\n";

  /** Reads a text. */
  static LogText read(String text) {
    return new LogText(text, CsvText.read(text));
  }

  /** What its first line names. */
  List<String> columns() {
    return csv.columns();
  }

  /** Its other lines. */
  List<Row> lines() {
    return csv.lines();
  }

  /** What is wrong with the first line of the file; empty when nothing is. */
  Optional<Problem> badHeader(String file) {
    return csv.badHeader(file, LogWords.COLUMNS)
        .or(
            () ->
                columns().stream()
                    .filter(String::isBlank)
                    .findFirst()
                    .map(
                        blank ->
                            Problem.error(
                                file,
                                1,
                                "",
                                "has a column without a name",
                                "begin with " + String.join(",", LogWords.COLUMNS))));
  }

  /** What a line says, if it can be read. */
  Optional<LogEntry> entry(Row line) {
    return LogLine.read(columns(), line) instanceof LogLine.Says says
        ? Optional.of(says.entry())
        : Optional.empty();
  }

  /**
   * Where the line of an entry stands among {@link #lines}: the one that ends on the entry's line
   * of the file if it says the same, otherwise the last that says the same.
   *
   * @param taken places that are meant by others already
   */
  OptionalInt place(LogEntry entry, List<Integer> taken) {
    List<Row> lines = lines();
    OptionalInt last = OptionalInt.empty();
    for (int i = 0; i < lines.size(); i++) {
      Optional<LogEntry> said = taken.contains(i) ? Optional.empty() : entry(lines.get(i));
      if (said.filter(entry::saysTheSame).isPresent()) {
        last = OptionalInt.of(i);
        if (lines.get(i).line() == entry.line()) {
          return last;
        }
      }
    }
    return last;
  }

  /** The header's row. */
  Row header() {
    return csv.rows().get(0);
  }

  /** The letters of a line, without its end. */
  String letters(Row line) {
    return text.substring(line.from(), line.to());
  }

  /** The letters of all lines. */
  List<String> letters() {
    return lines().stream().map(this::letters).collect(Collectors.toCollection(ArrayList::new));
  }
}
