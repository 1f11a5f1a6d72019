package limberboard.upkeep;

import java.time.LocalDate;

/**
 * From when an interval runs, and why from then.
 *
 * @param date the day
 * @param origin what happened on it
 * @param by the log's word for it: a procedure id or an event; empty for the boat's launch
 */
public record IntervalStart(LocalDate date, Origin origin, String by) {

  /** What an interval runs from. */
  public enum Origin {
    /** The work was done. */
    DONE,
    /** Other work was done that resets it. */
    RESET,
    /** An event without which it does not run. */
    EVENT,
    /** The work is not in the log, so it counts from when the boat was new. */
    NEW
  }
}
