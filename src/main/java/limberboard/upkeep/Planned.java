package limberboard.upkeep;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Work;

/**
 * Work that the forecast expects to be done on a day.
 *
 * @param which as {@link Due#which}
 * @param work the page to do it by
 * @param after of a look again, the work that it follows
 * @param day when it is expected to be done
 * @param runsOut the last day within its interval
 * @param phase when in the boat's year it is done, if the page says
 * @param season the year of the season it belongs to
 * @param why the reason
 * @param round the round that it is done with, if it is
 */
public record Planned(
    WorkId which,
    Page<Procedure> work,
    Optional<Page<Procedure>> after,
    LocalDate day,
    LocalDate runsOut,
    Optional<Phase> phase,
    int season,
    Why why,
    Optional<InRound> round) {
  /** The same, done with a round. */
  Planned in(InRound in) {
    return new Planned(which, work, after, day, runsOut, phase, season, why, Optional.of(in));
  }

  /** The last day within its interval; none for what nobody knows when it was done. */
  public Optional<LocalDate> lastDay() {
    return why instanceof Why.NotKnown ? Optional.empty() : Optional.of(runsOut);
  }

  /** As {@link Due#isLookFirst}. */
  public boolean isLookFirst() {
    return why instanceof Why.NotKnown && work.details().work() != Work.INSPECT;
  }

  /** As {@link Due#ownNeed}. */
  Need need() {
    return Due.needed(work, after);
  }

  /** As {@link Due#ownerMinutes}. */
  public int ownerMinutes() {
    return round.map(InRound::minutes).orElseGet(() -> OwnerTime.of(work, after));
  }

  /** As {@link WorkId#text}. */
  public String id() {
    return which.text();
  }

  /** What it is called on a list. */
  public String title() {
    return after.map(page -> "Look again: " + page.title()).orElseGet(work::title);
  }
}
