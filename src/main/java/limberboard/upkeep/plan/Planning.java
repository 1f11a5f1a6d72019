package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.List;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayWords;

/**
 * Answers what a person asks: reads the free days, or proposes some, and plans. Where days are
 * proposed, shorter and longer ones are tried, since some work fits into a long day only; those
 * count with which more danger is taken out. Immutable.
 *
 * @param upkeep what is due on the boat on the day of asking
 */
public record Planning(Upkeep upkeep) {
  /** Usual days that are tried, in minutes; of equally good ones the first counts. */
  private static final List<Integer> USUAL_DAYS = List.of(300, 480);

  private static final int USUAL_WEEKS = 4;

  /** A plan, or why there can be none. */
  public PlanAnswer answer(PlanOrder order) {
    LocalDate on = upkeep.fitting().on();
    if (order.until().isBefore(on)) {
      return new PlanAnswer.Refused(
          DayWords.of(order.until())
              + " is past; today is "
              + DayWords.of(on)
              + ". Write a day that is still to come.");
    }
    if (order.minutes().isPresent() && order.minutes().getAsInt() <= 0) {
      return new PlanAnswer.Refused("There is no time to plan; write more than 0 hours.");
    }
    if (!order.days().isEmpty()) {
      return named(order, on);
    }
    return order.minutes().isPresent()
        ? new PlanAnswer.Made(proposed(order, order.minutes().getAsInt()))
        : new PlanAnswer.Refused("Say how many hours there are, or name days with their hours.");
  }

  /**
   * Until when is planned where nobody says: the day before the launching while she is laid up,
   * four weeks while she is afloat.
   */
  public LocalDate usualUntil() {
    LocalDate on = upkeep.fitting().on();
    return upkeep.seasons().afloat(on)
        ? on.plusWeeks(USUAL_WEEKS)
        : upkeep.seasons().around(on).from().minusDays(1);
  }

  private PlanAnswer named(PlanOrder order, LocalDate on) {
    FreeDays days = new FreeDaysReader(on, order.until()).read(order.days(), order.minutes());
    return days.days().isEmpty()
        ? new PlanAnswer.Refused(
            "None of the days can be taken. " + String.join(" ", days.remarks()))
        : new PlanAnswer.Made(plan(days, order));
  }

  private WorkPlan plan(FreeDays days, PlanOrder order) {
    return new PlanMaker(upkeep).plan(new PlanWish(days, order.until(), order.firstTime()));
  }

  private WorkPlan proposed(PlanOrder order, int minutes) {
    LocalDate on = upkeep.fitting().on();
    boolean afloat = upkeep.seasons().afloat(on);
    LocalDate last = afloat ? order.until() : beforeLaunching(order.until());
    return USUAL_DAYS.stream()
        .map(usual -> FreeDays.proposed(minutes, on, last, afloat, usual))
        .distinct()
        .map(days -> plan(days, order))
        .reduce((one, other) -> other.proof().danger() > one.proof().danger() ? other : one)
        .orElseThrow();
  }

  /** The last day on which she is still ashore, if she is launched before a day. */
  private LocalDate beforeLaunching(LocalDate until) {
    AfloatSeason next = upkeep.seasons().around(upkeep.fitting().on());
    LocalDate ashore = next.from().minusDays(1);
    return ashore.isBefore(until) ? ashore : until;
  }
}
