package limberboard.desktop.upkeep.log;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.LogEntry;
import limberboard.desktop.upkeep.entry.EntryWords;
import limberboard.library.Library;
import limberboard.words.Sentences;

/**
 * A line of a log as it is shown.
 *
 * @param day in words
 * @param work what was done
 * @param hours the hour meter's reading, or empty
 * @param counted what was counted, or empty
 * @param note anything else
 */
public record LogRow(String day, String work, String hours, String counted, String note) {
  /** The order in which a log is read. */
  static final Comparator<LogEntry> NEWEST_FIRST =
      Comparator.comparing(LogEntry::date).thenComparing(LogEntry::line).reversed();

  /** An entry in words. */
  static LogRow of(EntryWords words, LogEntry entry) {
    return new LogRow(
        entry.day(),
        words.work(entry),
        EntryWords.hours(entry.engineHours()),
        EntryWords.counted(entry.uses()),
        note(entry));
  }

  /** The note, after how it is known where the owner did not have it done. */
  private static String note(LogEntry entry) {
    return Stream.concat(
            entry.known().map(how -> Sentences.capital(how.from().sentence()) + ".").stream(),
            Stream.of(entry.note()).filter(note -> !note.isEmpty()))
        .collect(Collectors.joining(" "));
  }

  /** A whole log, the newest first; the library names the work. */
  public static List<LogRow> of(Library library, List<LogEntry> log) {
    EntryWords words = new EntryWords(library);
    return log.stream().sorted(NEWEST_FIRST).map(entry -> of(words, entry)).toList();
  }

  /** Whether a word, in small letters, is anywhere in it. */
  boolean has(String word) {
    String whole = String.join(" ", day, work, hours, counted, note).toLowerCase(Locale.ROOT);
    return whole.contains(word);
  }
}
