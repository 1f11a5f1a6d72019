package limberboard.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.file.CsvText;
import limberboard.library.file.CsvText.Row;

/**
 * The one grammar of a line of a log, for reading it and for writing it: which cell says what, and
 * that cells without anything in them may be left out at its end, from the fifth column on.
 */
final class LogLine {
  private LogLine() {}

  /** What a line says. */
  sealed interface Read {}

  /** It says this. */
  record Says(LogEntry entry) implements Read {}

  /**
   * It cannot be used.
   *
   * @param key the column in question, or empty
   * @param wrong what is wrong
   * @param right what would be right
   */
  record Unusable(String key, String wrong, String right) implements Read {}

  /** Reads a line. */
  static Read read(List<String> columns, Row row) {
    int size = row.cells().size();
    if (size > columns.size() || size < needed(columns)) {
      return uneven(row);
    }
    Typed<LocalDate> day = LogDay.read(cell(columns, row, LogWords.DATE));
    if (day instanceof Typed.Bad<LocalDate> bad) {
      return new Unusable(LogWords.DATE, bad.wrong(), bad.right());
    }
    String meter = cell(columns, row, LogWords.ENGINE_HOURS);
    Typed<Double> hours = meter.isBlank() ? new Typed.Good<>(-1.0) : LogHours.read(meter);
    if (hours instanceof Typed.Bad<Double> bad) {
      return new Unusable(LogWords.ENGINE_HOURS, bad.wrong(), bad.right());
    }
    Map<String, Integer> uses = new LinkedHashMap<>();
    for (String column : columns) {
      String count = LogWords.countsUses(column) ? cell(columns, row, column) : "";
      if (!count.isBlank()) {
        Typed<Integer> counted = LogCount.read(count);
        if (counted instanceof Typed.Bad<Integer> bad) {
          return new Unusable(column, bad.wrong(), bad.right());
        }
        uses.put(column, counted.good().orElseThrow());
      }
    }
    String how = cell(columns, row, LogWords.KNOWN_BY);
    Optional<Typed<HowKnown>> known =
        how.isBlank() ? Optional.empty() : Optional.of(HowKnown.read(how));
    if (known.isPresent() && known.get() instanceof Typed.Bad<HowKnown> bad) {
      return new Unusable(LogWords.KNOWN_BY, bad.wrong(), bad.right());
    }
    double reading = hours.good().orElseThrow();
    return new Says(
        new LogEntry(
            day.good().orElseThrow(),
            cell(columns, row, LogWords.WORK).strip(),
            reading < 0 ? OptionalDouble.empty() : OptionalDouble.of(reading),
            uses,
            LogNote.plain(cell(columns, row, LogWords.NOTE)),
            Optional.of(cell(columns, row, LogWords.OF).strip()).filter(id -> !id.isEmpty()),
            known.flatMap(Typed::good),
            row.line()));
  }

  /** That a line has more or fewer cells than it may. */
  static Unusable uneven(Row row) {
    return new Unusable(
        "",
        "has " + row.cells().size() + " fields, not as many as the first line",
        "put text that holds a comma in double quotes");
  }

  /** How many cells a line has at least: up to the last of the columns that every log has. */
  private static int needed(List<String> columns) {
    return LogWords.COLUMNS.stream().mapToInt(columns::indexOf).max().orElseThrow() + 1;
  }

  private static String cell(List<String> columns, Row row, String column) {
    int at = columns.indexOf(column);
    return at >= 0 && at < row.cells().size() ? row.cells().get(at) : "";
  }

  /** What in an entry cannot be written; empty when all of it can. */
  static Optional<Unusable> wrong(LogEntry entry) {
    List<Optional<Unusable>> wrong = new ArrayList<>();
    wrong.add(unusable(LogWords.DATE, LogDay.check(entry.date())));
    entry
        .engineHours()
        .ifPresent(hours -> wrong.add(unusable(LogWords.ENGINE_HOURS, LogHours.check(hours))));
    entry.uses().forEach((use, count) -> wrong.add(unusable(use, LogCount.check(count))));
    wrong.add(unusable(LogWords.NOTE, LogNote.read(entry.note())));
    return wrong.stream().flatMap(Optional::stream).findFirst();
  }

  private static Optional<Unusable> unusable(String key, Typed<?> typed) {
    return typed.bad().map(bad -> new Unusable(key, bad.wrong(), bad.right()));
  }

  /** The columns that an entry needs beyond those that every log has. */
  static List<String> further(LogEntry entry) {
    List<String> further = new ArrayList<>(entry.uses().keySet().stream().sorted().toList());
    entry.of().ifPresent(of -> further.add(LogWords.OF));
    entry.known().ifPresent(how -> further.add(LogWords.KNOWN_BY));
    return further;
  }

  /** An entry as a line without its end; a line break within a note is written as given. */
  static String write(List<String> columns, LogEntry entry, String lineEnd) {
    return CsvText.line(
        columns.stream().map(column -> value(column, entry).replace("\n", lineEnd)).toList());
  }

  private static String value(String column, LogEntry entry) {
    return switch (column) {
      case LogWords.DATE -> LogDay.write(entry.date());
      case LogWords.WORK -> entry.work();
      case LogWords.NOTE -> LogNote.plain(entry.note());
      case LogWords.OF -> entry.of().orElse("");
      case LogWords.KNOWN_BY -> entry.known().map(HowKnown::written).orElse("");
      case LogWords.ENGINE_HOURS ->
          entry.engineHours().isPresent() ? LogHours.write(entry.engineHours().getAsDouble()) : "";
      default -> entry.uses().containsKey(column) ? LogCount.write(entry.uses().get(column)) : "";
    };
  }
}
