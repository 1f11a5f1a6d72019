package limberboard.boat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import limberboard.boat.CsvText.Row;

/**
 * The text of a log, read line by line.
 *
 * @param text the text, to the letter
 * @param columns what its first line names
 * @param lines its other lines
 * @param brokenFrom the line from which on it cannot be read
 */
record LogText(String text, List<String> columns, List<Row> lines, OptionalInt brokenFrom) {
  static final String NEW = String.join(",", LogWords.COLUMNS) + "\r\n";

  /** Reads a text. */
  static LogText read(String text) {
    CsvText csv = CsvText.read(text);
    List<String> columns = csv.rows().isEmpty() ? List.of() : csv.rows().get(0).cells();
    List<Row> lines = csv.rows().stream().skip(1).toList();
    return new LogText(text, columns, lines, csv.brokenFrom());
  }

  /**
   * What is wrong with the first line.
   *
   * @param key the column, or empty
   * @param wrong what is wrong with it
   */
  record BadHeader(String key, String wrong) {}

  /** What is wrong with the first line; empty when nothing is. */
  Optional<BadHeader> badHeader() {
    for (String column : LogWords.COLUMNS) {
      if (!columns.contains(column)) {
        return Optional.of(new BadHeader(column, "has no such column"));
      }
    }
    for (String column : columns) {
      if (column.isBlank()) {
        return Optional.of(new BadHeader("", "has a column without a name"));
      }
    }
    return new HashSet<>(columns).size() < columns.size()
        ? Optional.of(new BadHeader("", "has two columns of one name"))
        : Optional.empty();
  }

  /** What a line says, if it can be read. */
  Optional<LogEntry> entry(Row line) {
    return LogLine.read(columns, line) instanceof LogLine.Says says
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
    return CsvText.read(text).rows().get(0);
  }

  /** The letters of a line, without its end. */
  String letters(Row line) {
    return text.substring(line.from(), line.to());
  }

  /** The letters of all lines. */
  List<String> letters() {
    return lines.stream().map(this::letters).collect(Collectors.toCollection(ArrayList::new));
  }
}
