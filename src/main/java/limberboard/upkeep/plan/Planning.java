package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.function.IntFunction;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayWords;

/**
 * Answers what a person asks: reads the free days, or proposes some, and plans. Where days are
 * proposed, shorter and longer ones are tried, since some work fits into a long day only, and while
 * she is laid up sooner and later ones, since some keeps the frost out; those count with which more
 * danger is taken out. Immutable.
 *
 * @param upkeep what is due on the boat on the day of asking
 */
public record Planning(Upkeep upkeep) {
  private static final int SHORT_DAY = 300;
  private static final int USUAL_DAY = 480;
  private static final int LONG_DAY = 600;

  /** How many days are soon where work keeps the frost out. */
  private static final int WEEKEND = 2;

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

  /**
   * The plan on the best of the days that are tried: shorter and longer ones, very long ones where
   * work is left that needs them, and some soon where work is left that keeps the frost out.
   */
  private WorkPlan proposed(PlanOrder order, int minutes) {
    LocalDate on = upkeep.fitting().on();
    boolean afloat = upkeep.seasons().afloat(on);
    LocalDate last = afloat ? order.until() : beforeLaunching(order.until());
    int early = afloat ? minutes : 0;
    IntFunction<WorkPlan> late =
        usual -> plan(FreeDays.proposed(minutes, on, last, early, usual), order);
    WorkPlan best = better(late.apply(SHORT_DAY), late.apply(USUAL_DAY));
    if (leaves(best, Undone.Reason.NO_DAY_LONG_ENOUGH)) {
      best = better(best, late.apply(LONG_DAY));
    }
    if (leaves(best, Undone.Reason.FOR_LAYING_UP)) {
      int usual = best.wish().days().days().stream().mapToInt(FreeDay::minutes).max().orElseThrow();
      best = better(best, plan(FreeDays.proposed(minutes, on, last, WEEKEND, usual), order));
    }
    return best;
  }

  private static WorkPlan better(WorkPlan one, WorkPlan other) {
    return other.proof().danger() > one.proof().danger() ? other : one;
  }

  private static boolean leaves(WorkPlan plan, Undone.Reason reason) {
    return plan.undone().stream().anyMatch(undone -> undone.reason() == reason);
  }

  /** The last day on which she is still ashore, if she is launched before a day. */
  private LocalDate beforeLaunching(LocalDate until) {
    AfloatSeason next = upkeep.seasons().around(upkeep.fitting().on());
    LocalDate ashore = next.from().minusDays(1);
    return ashore.isBefore(until) ? ashore : until;
  }
}
