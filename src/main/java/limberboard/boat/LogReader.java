package limberboard.boat;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import limberboard.library.Library;
import limberboard.library.Problem;
import limberboard.library.TextFile;
import limberboard.library.WorkspaceFolders;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a boat's log (RFC 4180); a broken line is reported and left out, the rest is read. */
final class LogReader {
  static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,7}(\\.[0-9]{1,6})?");
  private static final Pattern COUNT = Pattern.compile("[0-9]{1,8}");

  private final WorkspaceFolders folders;
  private final Library library;

  LogReader(WorkspaceFolders folders, Library library) {
    this.folders = folders;
    this.library = library;
  }

  /** The entries by date, with what is wrong in the file. */
  record Read(List<LogEntry> entries, List<Problem> problems) {}

  Read read(Path log) {
    String file = folders.relative(log);
    TextFile.Result text = TextFile.read(log, file);
    List<Problem> problems = new ArrayList<>(text.problems());
    List<LogEntry> entries = new ArrayList<>();
    if (problems.isEmpty()) {
      read(file, text.text(), entries, problems);
    }
    entries.sort(Comparator.comparing(LogEntry::date));
    problems.addAll(backwards(file, entries));
    return new Read(List.copyOf(entries), problems);
  }

  private void read(String file, String text, List<LogEntry> entries, List<Problem> problems) {
    int read = 1;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (String column : LogWords.COLUMNS) {
        if (!parser.getHeaderMap().containsKey(column)) {
          problems.add(
              Problem.error(
                  file,
                  1,
                  column,
                  "has no such column",
                  "begin with " + String.join(",", LogWords.COLUMNS)));
          return;
        }
      }
      for (CSVRecord line : parser) {
        read = (int) parser.getCurrentLineNumber();
        entry(file, line, read, entries, problems);
      }
    } catch (IOException | java.io.UncheckedIOException | IllegalArgumentException e) {
      problems.add(
          Problem.error(
              file,
              read + 1,
              "",
              "cannot be read from here on, so that nothing from this line to the end of the file is"
                  + " counted and much may look overdue",
              "look for a double quote that is not closed; double a quote within quoted text"));
    }
  }

  private void entry(
      String file, CSVRecord line, int number, List<LogEntry> entries, List<Problem> problems) {
    if (!line.isConsistent()) {
      problems.add(
          Problem.error(
              file,
              number,
              "",
              "has " + line.size() + " fields, not as many as the first line",
              "put text that holds a comma in double quotes"));
      return;
    }
    String work = line.get("work").strip();
    if (!LogWords.EVENTS.contains(work) && library.procedure(work).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              number,
              "work",
              "\"" + work + "\" is neither a procedure nor an event",
              "write a procedure id or one of " + String.join(", ", LogWords.EVENTS)));
      return;
    }
    Optional<String> of = of(line);
    if (work.equals(LogWords.LOOKED_AGAIN) && of.flatMap(library::procedure).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              number,
              LogWords.OF,
              "does not name the work that was looked at again",
              "write the procedure's id into the column of"));
      return;
    }
    try {
      LocalDate date = LocalDate.parse(line.get("date").strip());
      String hours = line.get("engine-hours").strip();
      OptionalDouble reading =
          hours.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(hours(hours));
      entries.add(
          new LogEntry(date, work, reading, uses(line), line.get("note").strip(), of, number));
    } catch (DateTimeException e) {
      problems.add(
          Problem.error(
              file,
              number,
              "date",
              "\"" + line.get("date") + "\" is no date",
              "write it as 2026-05-01"));
    } catch (NumberFormatException e) {
      problems.add(
          Problem.error(file, number, "", e.getMessage() + " is no count", "write a number"));
    }
  }

  private static Optional<String> of(CSVRecord line) {
    return line.isMapped(LogWords.OF)
        ? Optional.of(line.get(LogWords.OF).strip()).filter(id -> !id.isEmpty())
        : Optional.empty();
  }

  private static double hours(String text) {
    double hours = NUMBER.matcher(text).matches() ? Double.parseDouble(text) : -1;
    if (!(hours >= 0)) {
      throw new NumberFormatException("\"" + text + "\"");
    }
    return hours;
  }

  private static int count(String text) {
    if (!COUNT.matcher(text).matches()) {
      throw new NumberFormatException("\"" + text + "\"");
    }
    return Integer.parseInt(text);
  }

  private static String hours(LogEntry entry) {
    return BigDecimal.valueOf(entry.engineHours().orElse(0)).stripTrailingZeros().toPlainString();
  }

  private static Map<String, Integer> uses(CSVRecord line) {
    Map<String, Integer> uses = new HashMap<>();
    line.toMap()
        .forEach(
            (column, value) -> {
              if (LogWords.countsUses(column) && !value.isBlank()) {
                uses.put(column, count(value.strip()));
              }
            });
    return uses;
  }

  private static List<Problem> backwards(String file, List<LogEntry> entries) {
    return HourMeter.of(entries).doubted().stream()
        .map(
            entry ->
                Problem.warning(
                    file,
                    entry.line(),
                    LogWords.ENGINE_HOURS,
                    hours(entry)
                        + " on "
                        + entry.date()
                        + " does not go with the readings before and after it, and is not counted",
                    "correct the reading, or write new-meter where the meter was replaced"))
        .toList();
  }
}
