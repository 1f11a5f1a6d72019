package limberboard.upkeep.plan;

import limberboard.library.value.Word;

/**
 * Due work that a plan leaves undone.
 *
 * @param work the work
 * @param reason why
 * @param waitsFor the title of what it waits for; empty unless that is the reason
 */
public record Undone(DueWork work, Reason reason, String waitsFor) {

  /** Why work stays undone. */
  public enum Reason implements Word {
    /** Other work takes more danger out in the time there is. */
    NO_TIME,
    /** It takes longer than any of the days on which it could be done. */
    NO_DAY_LONG_ENOUGH,
    /** She is afloat on all the days, and it needs her ashore. */
    NEEDS_HER_ASHORE,
    /** She is ashore on all the days, and it needs her afloat. */
    NEEDS_HER_AFLOAT,
    /** It belongs to laying up, and the days come after the first half of the winter. */
    FOR_LAYING_UP,
    /** It would have to be booked before now. */
    TOO_LATE_TO_BOOK,
    /** It waits for work that stays undone itself. */
    WAITS
  }
}
