package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.HowKnown;

/**
 * From when an interval runs, and why from then.
 *
 * @param date the day
 * @param origin what happened on it
 * @param by the log's word for it: a procedure id or an event; empty for the boat's launch
 * @param known how it is known, of work that nobody logged when it was done
 */
public record IntervalStart(LocalDate date, Origin origin, String by, Optional<HowKnown> known) {

  /** Of what was logged when it was done, or never. */
  IntervalStart(LocalDate date, Origin origin, String by) {
    this(date, origin, by, Optional.empty());
  }

  /** What an interval runs from. */
  public enum Origin {
    /** The work was done. */
    DONE,
    /** Other work was done that resets it. */
    RESET,
    /** An event without which it does not run. */
    EVENT,
    /** The work is not in the log, so it counts from when the boat was new. */
    NEW,
    /**
     * The work is not in the log, and it would have run out before the boat was bought: nobody
     * knows when it was done, and the day on which the boat was new only keeps its place in the
     * order.
     */
    NOT_KNOWN
  }

  /** Whether anybody knows when the work was done, or that the boat was new then. */
  public boolean isKnown() {
    return origin != Origin.NOT_KNOWN;
  }

  /** The same day, from which nobody knows whether the work was done. */
  IntervalStart notKnown() {
    return new IntervalStart(date, Origin.NOT_KNOWN, by);
  }
}
