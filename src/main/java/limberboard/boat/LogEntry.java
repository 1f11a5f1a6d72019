package limberboard.boat;

import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One line of a boat's log.
 *
 * @param date the day
 * @param work a procedure id, or one of {@code launched hauled-out mast-up mast-down reading}
 * @param engineHours the hour meter's reading, 0 or more
 * @param uses counted uses since the last line, by name
 * @param note anything else
 */
public record LogEntry(
    LocalDate date,
    String work,
    OptionalDouble engineHours,
    Map<String, Integer> uses,
    String note) {
  /** Copies the uses. */
  public LogEntry {
    uses = Map.copyOf(uses);
  }
}
