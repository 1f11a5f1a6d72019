package limberboard.upkeep;

import limberboard.boat.LogEntry;
import limberboard.library.value.LogEvents;

/**
 * What tells one piece of a boat's recurring work from another.
 *
 * @param procedure the id of the work's procedure
 * @param again whether it is the look again after that work
 */
public record WorkId(String procedure, boolean again) {
  /** What an entry of the log says was done. */
  public static WorkId of(LogEntry entry) {
    boolean again = entry.work().equals(LogEvents.LOOKED_AGAIN);
    return new WorkId(again ? entry.of().orElse("") : entry.work(), again);
  }

  /** As files and lists have it: the procedure's id, with {@code /again} behind it for a look. */
  public String text() {
    return again ? procedure + "/again" : procedure;
  }
}
