package limberboard.boat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import limberboard.library.Library;
import limberboard.library.Problem;
import limberboard.library.TextFile;
import limberboard.library.WorkspaceFolders;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a boat's log (RFC 4180); a broken line is reported and left out, the rest is read. */
final class LogReader {
  private static final Set<String> EVENTS =
      Set.of("launched", "hauled-out", "mast-up", "mast-down", "reading");
  private static final List<String> COLUMNS = List.of("date", "work", "engine-hours", "note");
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setIgnoreEmptyLines(true)
          .get();

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
    hoursBackwards(file, entries, problems);
    return new Read(List.copyOf(entries), problems);
  }

  private void read(String file, String text, List<LogEntry> entries, List<Problem> problems) {
    try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
      for (String column : COLUMNS) {
        if (!parser.getHeaderMap().containsKey(column)) {
          problems.add(
              Problem.error(
                  file,
                  1,
                  column,
                  "has no such column",
                  "begin with " + String.join(",", COLUMNS)));
          return;
        }
      }
      for (CSVRecord line : parser) {
        entry(file, line, (int) parser.getCurrentLineNumber(), entries, problems);
      }
    } catch (IOException | java.io.UncheckedIOException | IllegalArgumentException e) {
      problems.add(
          Problem.error(
              file,
              0,
              "",
              "cannot be read further as CSV: " + e.getMessage(),
              "put text that holds a comma or a quote in double quotes, and double the quotes"));
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
    if (!EVENTS.contains(work) && library.procedure(work).isEmpty()) {
      problems.add(
          Problem.error(
              file,
              number,
              "work",
              "\"" + work + "\" is neither a procedure nor an event",
              "write a procedure id or one of "
                  + String.join(", ", EVENTS.stream().sorted().toList())));
      return;
    }
    try {
      LocalDate date = LocalDate.parse(line.get("date").strip());
      String hours = line.get("engine-hours").strip();
      OptionalDouble reading =
          hours.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(hours(hours));
      entries.add(new LogEntry(date, work, reading, uses(line), line.get("note").strip()));
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

  private static double hours(String text) {
    double hours = Double.parseDouble(text);
    if (!(hours >= 0) || Double.isInfinite(hours)) {
      throw new NumberFormatException("\"" + text + "\"");
    }
    return hours;
  }

  private static Map<String, Integer> uses(CSVRecord line) {
    Map<String, Integer> uses = new HashMap<>();
    line.toMap()
        .forEach(
            (column, value) -> {
              if (!COLUMNS.contains(column) && !value.isBlank()) {
                uses.put(column, Integer.parseInt(value.strip()));
              }
            });
    return uses;
  }

  private static void hoursBackwards(String file, List<LogEntry> entries, List<Problem> problems) {
    double last = 0;
    for (LogEntry entry : entries) {
      if (entry.engineHours().isPresent()) {
        double now = entry.engineHours().getAsDouble();
        if (now < last) {
          problems.add(
              Problem.warning(
                  file,
                  0,
                  "engine-hours",
                  "run backwards on " + entry.date() + ", from " + last + " to " + now,
                  "correct the reading, or note that the meter was changed"));
        }
        last = now;
      }
    }
  }
}
