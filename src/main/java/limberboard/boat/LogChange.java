package limberboard.boat;

import java.util.List;
import java.util.Optional;

/**
 * A change made to a boat's log, which {@link LogWriter} can take back and make again.
 *
 * @param boat the boat's id
 * @param taken the entries that were taken out, with the lines they had
 * @param put the entries that were written, with the lines they have; where something was taken out
 *     as well, each stands in the place of the one taken out
 * @param before the log's text before, to the letter; empty when there was none
 * @param after its text after the change
 */
public record LogChange(
    String boat,
    List<LogEntry> taken,
    List<LogEntry> put,
    Optional<String> before,
    Optional<String> after) {
  /** Copies the lists. */
  public LogChange {
    taken = List.copyOf(taken);
    put = List.copyOf(put);
  }

  /** The change that takes this one back. */
  LogChange back() {
    return new LogChange(boat, put, taken, after, before);
  }
}
