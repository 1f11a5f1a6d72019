package limberboard.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Consequence;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;

/**
 * One piece of recurring or following-up work on a boat, as it stands on a day.
 *
 * @param which what tells it from the other work on the boat
 * @param work the page to do it by; of a look again, the inspection it is done with
 * @param after of a look again, the work that it follows
 * @param group how urgent it is
 * @param since from when the interval runs
 * @param runsOut the last day within it; empty when the log does not tell
 * @param plan the day to do it: the nearest on which the boat is so that it can be done
 * @param phase when in the boat's year it is done, if the page says
 * @param season the year of the season to whose work it belongs
 * @param limits what ends the interval
 * @param estimated whether {@code runsOut} is an estimate from counts
 * @param expires whether it runs out by its date even unused
 * @param why the reason
 */
public record Due(
    WorkId which,
    Page<Procedure> work,
    Optional<Page<Procedure>> after,
    Group group,
    IntervalStart since,
    Optional<LocalDate> runsOut,
    LocalDate plan,
    Optional<Phase> phase,
    int season,
    List<Limit> limits,
    boolean estimated,
    boolean expires,
    Why why) {
  /** Copies the list. */
  public Due {
    limits = List.copyOf(limits);
  }

  /** How urgent work is. */
  public enum Group {
    /** Its interval is over: its last day is today or gone. */
    OVERDUE("Overdue"),
    /** To be done for or in this season, or the coming one while the boat is laid up. */
    THIS_SEASON("This season"),
    /** Later. */
    COMING("Coming after this season"),
    /** The log does not tell: it lacks readings. */
    UNKNOWN("The log does not tell");

    private final String heading;

    Group(String heading) {
      this.heading = heading;
    }

    /** What is written above it. */
    public String heading() {
      return heading;
    }
  }

  /** As {@link WorkId#text}. */
  public String id() {
    return which.text();
  }

  /** Whether it is a look again after other work. */
  public boolean isLookAgain() {
    return after.isPresent();
  }

  /**
   * What follows when it is left undone; of a look again, what follows of the work that it is
   * after.
   */
  public Consequence consequence() {
    return interval().map(Interval::consequence).orElse(Consequence.UNSAID);
  }

  /**
   * How much it is needed; of a look again, as much as the work that it is after, and at least as
   * {@link Need#SHOULD}.
   */
  public Need need() {
    Need need = interval().map(Interval::needed).orElse(Need.UNSAID);
    return isLookAgain() && need == Need.OPTIONAL ? Need.SHOULD : need;
  }

  private Optional<Interval> interval() {
    return after.orElse(work).details().interval();
  }

  /** What it is called on a list. */
  public String title() {
    return after.map(page -> "Look again: " + page.title()).orElseGet(work::title);
  }
}
