package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Work;

/**
 * Says which due work need not be done by itself, because other due work resets it in time: of both
 * only the other is counted. Work that is met so meets nothing itself. Immutable.
 */
final class MetBy {
  private static final Set<Phase> ASHORE =
      Set.of(Phase.ASHORE_MAST_DOWN, Phase.ASHORE_MAST_UP, Phase.LAY_UP);

  private final Map<String, Due> doers = new HashMap<>();

  /** What is met among all that is due on a boat, the work of rounds included. */
  MetBy(List<Due> due) {
    List<Due> works =
        due.stream().filter(each -> !each.isLookAgain() && each.runsOut().isPresent()).toList();
    Set<String> reset = new HashSet<>();
    works.forEach(each -> reset.addAll(each.work().details().resets()));
    List<Due> fromTheWhole = new ArrayList<>(works);
    fromTheWhole.sort(Comparator.comparing(each -> reset.contains(each.id())));
    Set<String> meeting = new HashSet<>();
    for (Due doer : fromTheWhole) {
      for (Due each : works) {
        if (!doers.containsKey(doer.id())
            && !meeting.contains(each.id())
            && Doing.of(doer).meets(Doing.of(each))
            && doers.putIfAbsent(each.id(), doer) == null) {
          meeting.add(doer.id());
        }
      }
    }
  }

  /** The due work with which this is done; empty when it is to be done by itself. */
  Optional<Due> doer(Due due) {
    return due.isLookAgain() ? Optional.empty() : Optional.ofNullable(doers.get(due.id()));
  }

  /**
   * Doing a piece of work once.
   *
   * @param day when it is best done
   * @param runsOut the last day within its interval
   * @param phase when in the boat's year it is done, if the page says
   * @param season the year of the season to whose work it belongs
   * @param known whether it is known when it was done last
   */
  record Doing(
      Page<Procedure> work,
      LocalDate day,
      LocalDate runsOut,
      Optional<Phase> phase,
      int season,
      Need need,
      boolean known) {
    static Doing of(Due due) {
      return new Doing(
          due.work(),
          due.plan(),
          due.runsOut().orElseThrow(),
          due.phase(),
          due.season(),
          due.ownNeed(),
          due.isKnown());
    }

    static Doing of(Planned each) {
      return new Doing(
          each.work(),
          each.day(),
          each.runsOut(),
          each.phase(),
          each.season(),
          each.need(),
          !(each.why() instanceof Why.NotKnown));
    }

    /**
     * Whether other work need not be done when this is: this resets it, is for the same season and
     * at least as much needed, and is done before the other runs out or on the day it would be
     * done, or in the same part of the winter. Not so where the other comes first: since its page
     * says so, or as the look that shows whether this is needed.
     */
    boolean meets(Doing other) {
      boolean inTime =
          !day.isAfter(other.runsOut) || !day.isAfter(other.day) || isSameWinter(other);
      boolean looksFirst = !known && other.work.details().work() == Work.INSPECT;
      return resets(other)
          && season == other.season
          && need.compareTo(other.need) <= 0
          && inTime
          && !looksFirst
          && !other.work.details().before().contains(work.id());
    }

    /** Both ashore in the same way: nothing is used in between, but it can run out unused. */
    private boolean isSameWinter(Doing other) {
      boolean runsOutUnused = other.work.details().interval().filter(Interval::expires).isPresent();
      return !runsOutUnused
          && phase.filter(ASHORE::contains).equals(other.phase)
          && phase.isPresent();
    }

    private boolean resets(Doing other) {
      return !work.id().equals(other.work.id())
          && work.details().resets().contains(other.work.id());
    }
  }
}
