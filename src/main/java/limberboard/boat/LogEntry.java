package limberboard.boat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.value.LogEvents;

/**
 * One line of a boat's log.
 *
 * @param date the day
 * @param work a procedure id, or one of {@link LogEvents#ALL}
 * @param engineHours the hour meter's reading, 0 or more
 * @param uses counted uses since the last line, by name
 * @param note anything else
 * @param of the work that was looked at again, with the event {@code looked-again}
 * @param line the line of the file on which it ends, from 1; 0 for one that is not in a file yet
 */
public record LogEntry(
    LocalDate date,
    String work,
    OptionalDouble engineHours,
    Map<String, Integer> uses,
    String note,
    Optional<String> of,
    int line) {
  /** Copies the uses. */
  public LogEntry {
    uses = Map.copyOf(uses);
  }

  /** Whether another entry says the same, on whichever line it stands. */
  public boolean saysTheSame(LogEntry other) {
    return equals(other.on(line));
  }

  /** The same day and reading for other work; without what was counted and noted. */
  public LogEntry of(String otherWork) {
    return new LogEntry(date, otherWork, engineHours, Map.of(), "", Optional.empty(), 0);
  }

  /** The same entry on another line of the file. */
  public LogEntry on(int otherLine) {
    return new LogEntry(date, work, engineHours, uses, note, of, otherLine);
  }
}
