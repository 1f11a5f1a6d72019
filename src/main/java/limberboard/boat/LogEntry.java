package limberboard.boat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.value.LogEvents;
import limberboard.words.DayText;

/**
 * One line of a boat's log.
 *
 * @param date the day
 * @param work a procedure id, or one of {@link LogEvents#ALL}
 * @param engineHours the hour meter's reading, 0 or more
 * @param uses counted uses since the last line, by name
 * @param note anything else
 * @param of the work that was looked at again, with the event {@code looked-again}
 * @param known how it is known, of work that the owner neither did nor had done
 * @param line the line of the file on which it ends, from 1; 0 for one that is not in a file yet
 */
public record LogEntry(
    LocalDate date,
    String work,
    OptionalDouble engineHours,
    Map<String, Integer> uses,
    String note,
    Optional<String> of,
    Optional<HowKnown> known,
    int line) {
  /** Copies the uses. */
  public LogEntry {
    uses = Map.copyOf(uses);
  }

  /** What the owner did or had done. */
  public LogEntry(
      LocalDate date,
      String work,
      OptionalDouble engineHours,
      Map<String, Integer> uses,
      String note,
      Optional<String> of,
      int line) {
    this(date, work, engineHours, uses, note, of, Optional.empty(), line);
  }

  /** Work of which it is known that it was done, without having been logged then. */
  public static LogEntry known(LocalDate date, String work, HowKnown how) {
    return new LogEntry(
        date, work, OptionalDouble.empty(), Map.of(), "", Optional.empty(), Optional.of(how), 0);
  }

  /** The same, known in another way. */
  public LogEntry known(Optional<HowKnown> how) {
    return new LogEntry(date, work, engineHours, uses, note, of, how, line);
  }

  /** The day in words, as far as it is known: {@code 20 May 2024}, {@code about 2024}. */
  public String day() {
    return known.map(how -> how.day(date)).orElseGet(() -> DayText.written(date));
  }

  /** Whether another entry says the same, on whichever line it stands. */
  public boolean saysTheSame(LogEntry other) {
    return equals(other.on(line));
  }

  /** The same day and reading for other work; without what was counted and noted. */
  public LogEntry of(String otherWork) {
    return new LogEntry(
        date, otherWork, engineHours, Map.of(), "", Optional.empty(), Optional.empty(), 0);
  }

  /** The same entry on another line of the file. */
  public LogEntry on(int otherLine) {
    return new LogEntry(date, work, engineHours, uses, note, of, known, otherLine);
  }
}
