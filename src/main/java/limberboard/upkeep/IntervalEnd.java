package limberboard.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When an interval that began on a day is over.
 *
 * @param day the last day within it; empty when only a count ends it and the log does not tell
 * @param ranOut the same without waiting for the boat to be launched or laid up
 * @param limits all that ends it
 * @param deciding the one that comes first; empty when none can be told
 * @param waits why the day is later than the limit alone would have it
 */
public record IntervalEnd(
    Optional<LocalDate> day,
    Optional<LocalDate> ranOut,
    List<Limit> limits,
    Optional<Limit> deciding,
    Waits waits) {
  /** Copies the list. */
  public IntervalEnd {
    limits = List.copyOf(limits);
  }

  /** Why work is due later than its limit. */
  public enum Waits {
    /** It is not. */
    NOT,
    /** The boat is too young for it. */
    FOR_AGE,
    /** It is done afloat, and the boat is laid up. */
    FOR_LAUNCH,
    /** It ran out while she was afloat and was not done; now she is laid up. */
    LEFT_UNDONE_AFLOAT,
    /** It is for a winter, and too late for this one. */
    FOR_LAYING_UP
  }
}
