package limberboard.boat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.Problem;
import limberboard.library.SafeFiles;
import limberboard.library.WorkspaceFolders;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Writes a boat's {@code log.csv} (RFC 4180): adds an entry at its end, or takes one out again.
 * Every other line stays as it is, to the letter; a file that cannot be read to its end is left
 * alone and the reason returned. A new column is added only when an entry needs it.
 */
public final class LogWriter {
  private static final String CRLF = "\r\n";

  private final WorkspaceFolders folders;

  /** A writer for this workspace. */
  public LogWriter(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /**
   * Adds an entry at the end of the boat's log, which is made if it is not there.
   *
   * @param boat the boat's id
   * @return why it was not written, if it was not
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public Optional<Problem> add(String boat, LogEntry entry) throws IOException {
    Path file = file(boat);
    String text = Files.exists(file) ? text(file) : header(LogWords.COLUMNS);
    Parsed parsed = parse(file, text);
    if (parsed.problem().isPresent()) {
      return parsed.problem();
    }
    List<String> missing = missing(parsed.columns(), entry);
    if (!missing.isEmpty()) {
      parsed = widened(parsed, missing);
    }
    String kept = parsed.text();
    String end = kept.isEmpty() || kept.endsWith("\n") ? "" : lineEnd(kept);
    SafeFiles.write(file, kept + end + line(parsed.columns(), entry) + lineEnd(kept));
    return Optional.empty();
  }

  /**
   * Takes the last line out that says what this entry says.
   *
   * @param boat the boat's id
   * @return why nothing was taken out, if so
   * @throws IOException when it cannot be written; the old file is then still there, whole
   */
  public Optional<Problem> remove(String boat, LogEntry entry) throws IOException {
    Path file = file(boat);
    String text = Files.exists(file) ? text(file) : header(LogWords.COLUMNS);
    Parsed parsed = parse(file, text);
    if (parsed.problem().isPresent()) {
      return parsed.problem();
    }
    for (int i = parsed.records().size() - 1; i >= 0; i--) {
      CSVRecord record = parsed.records().get(i);
      if (says(parsed.columns(), record, entry)) {
        int from = (int) record.getCharacterPosition();
        int to =
            i + 1 < parsed.records().size()
                ? (int) parsed.records().get(i + 1).getCharacterPosition()
                : text.length();
        SafeFiles.write(file, text.substring(0, from) + text.substring(to));
        return Optional.empty();
      }
    }
    return Optional.of(
        Problem.error(
            folders.relative(file),
            0,
            LogWords.WORK,
            "has no line with " + entry.work() + " on " + entry.date(),
            "look at the log; it may have been changed meanwhile"));
  }

  /**
   * Whether a use may be counted under this name: a word of small letters, digits and hyphens that
   * is not a column of its own.
   */
  public static boolean mayBeCounted(String use) {
    return use.matches("[a-z][a-z0-9-]*") && LogWords.countsUses(use);
  }

  private Path file(String boat) {
    return folders.boats().resolve(boat).resolve(BoatReader.LOG);
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file);
  }

  private static String header(List<String> columns) {
    return String.join(",", columns) + CRLF;
  }

  /** A log read line by line, or why it cannot be. */
  private record Parsed(
      String text, List<String> columns, List<CSVRecord> records, Optional<Problem> problem) {}

  private Parsed parse(Path file, String text) {
    String name = folders.relative(file);
    try (CSVParser parser = CSVParser.parse(new StringReader(text), LogReader.FORMAT)) {
      List<String> columns = parser.getHeaderNames();
      List<CSVRecord> records = new ArrayList<>(parser.getRecords());
      if (!columns.containsAll(LogWords.COLUMNS)) {
        return broken(name, 1, "does not begin with " + String.join(",", LogWords.COLUMNS));
      }
      return new Parsed(text, columns, records, Optional.empty());
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      return broken(name, 0, "cannot be read to its end: " + e.getMessage());
    }
  }

  private static Parsed broken(String name, int line, String wrong) {
    String right = "mend it by hand first, so that nothing is lost; nothing was written";
    return new Parsed(
        "", List.of(), List.of(), Optional.of(Problem.error(name, line, "", wrong, right)));
  }

  private static List<String> missing(List<String> columns, LogEntry entry) {
    Set<String> needed = new LinkedHashSet<>(entry.uses().keySet());
    entry.of().ifPresent(of -> needed.add(LogWords.OF));
    needed.removeAll(columns);
    return List.copyOf(needed);
  }

  private static Parsed widened(Parsed parsed, List<String> more) {
    List<String> columns = new ArrayList<>(parsed.columns());
    columns.addAll(more);
    String end = lineEnd(parsed.text());
    StringBuilder text = new StringBuilder(CSVFormat.RFC4180.format(columns.toArray())).append(end);
    for (CSVRecord record : parsed.records()) {
      List<String> values = new ArrayList<>(record.toList());
      if (record.isConsistent()) {
        more.forEach(column -> values.add(""));
      }
      text.append(CSVFormat.RFC4180.format(values.toArray())).append(end);
    }
    return new Parsed(text.toString(), columns, parsed.records(), Optional.empty());
  }

  private static String lineEnd(String text) {
    return text.contains(CRLF) || !text.contains("\n") ? CRLF : "\n";
  }

  private static String line(List<String> columns, LogEntry entry) {
    return CSVFormat.RFC4180.format(columns.stream().map(column -> value(column, entry)).toArray());
  }

  private static boolean says(List<String> columns, CSVRecord record, LogEntry entry) {
    return record.isConsistent()
        && columns.stream()
            .allMatch(column -> record.get(column).strip().equals(value(column, entry)));
  }

  private static String value(String column, LogEntry entry) {
    return switch (column) {
      case LogWords.DATE -> entry.date().toString();
      case LogWords.WORK -> entry.work();
      case LogWords.NOTE -> entry.note();
      case LogWords.OF -> entry.of().orElse("");
      case LogWords.ENGINE_HOURS ->
          entry.engineHours().isPresent() ? plain(entry.engineHours().getAsDouble()) : "";
      default -> entry.uses().containsKey(column) ? entry.uses().get(column).toString() : "";
    };
  }

  private static String plain(double hours) {
    return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
  }
}
