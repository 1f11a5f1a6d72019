package limberboard.effort;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.MendEffort;

/**
 * What a step costs more on average than the best step there: its regret, in minutes. How the step
 * happens to turn out does not matter, so that luck does not count.
 *
 * <p>With <i>V</i> what is expected from a situation on and <i>Q</i> the same when a given step is
 * made first, the regret is <i>Q − V</i>. Both are reckoned one step further than the planner's
 * advice: the situations a step can lead to are planned anew, and the cheaper figure counts. A sum
 * of regrets along a trace is, on average, what the way of playing costs more than the best plan:
 * the performance difference lemma, S. Kakade and J. Langford, <i>Approximately optimal approximate
 * reinforcement learning</i>, 2002.
 *
 * <p>Remembers what it has planned; one object belongs to one thread.
 */
public final class Regrets {
  private static final double ROUNDING = 1e12;
  private static final int MOST_KEPT = 200_000;

  private final EffortModel model;
  private final Policy planner;
  private final Onward onward;
  private final Map<List<Object>, Advice> known = new HashMap<>();

  /**
   * A step judged.
   *
   * @param best the planner's choice in that situation
   * @param bestMinutes what is expected when that is done, in minutes
   * @param minutes what is expected when the step is done instead
   * @param doubt how many of {@code bestMinutes} are not proven to be needed
   */
  public record Judged(Option best, double bestMinutes, double minutes, double doubt) {
    /** What the step costs more on average, in minutes, 0 or more. */
    public double regret() {
      return Math.max(0, minutes - bestMinutes);
    }
  }

  /**
   * Makes it.
   *
   * @param model what everything costs
   * @param planner the rule that steps are held against
   */
  public Regrets(EffortModel model, Policy planner) {
    this.model = model;
    this.planner = planner;
    this.onward = new Onward(model);
  }

  /** What the planner proposes in a situation. */
  public Advice advice(Situation now) {
    if (known.size() > MOST_KEPT) {
      known.clear();
    }
    return known.computeIfAbsent(key(now), unseen -> planner.advise(model, now));
  }

  /** What is expected from a situation on, in minutes, when the best step known is made there. */
  public double expected(Situation now) {
    Option best = advice(now).best();
    return isPassed(now) ? Math.min(best.expectedMinutes(), after(now, best)) : after(now, best);
  }

  /** Judges a check, made for the first time or again. */
  public Judged check(Situation now, int check) {
    double minutes = model.checkMinutes(check, now.open());
    return judged(now, Action.CHECK, check, minutes + ways(onward.ofCheck(now, check)));
  }

  /** Judges taking a check as one that could not be told, without looking. */
  public Judged untold(Situation now, int check) {
    double minutes = model.checkMinutes(check, now.open());
    return judged(now, minutes + planned(onward.notTold(now, check)));
  }

  /** Judges a mend, made for the first time or again. */
  public Judged mend(Situation now, int cause) {
    double minutes = model.mendMinutes(cause, now.open());
    return judged(now, Action.MEND, cause, minutes + ways(onward.ofMend(now, cause)));
  }

  /** Judges opening something before it is needed. */
  public Judged open(Situation now, int access) {
    BitSet one = new BitSet();
    one.set(access);
    double minutes = model.accessMinutes(one, now.open());
    return judged(now, minutes + planned(onward.opened(now, access)));
  }

  /**
   * Judges handing the fault to the yard.
   *
   * @param named number of the cause that it is told, −1 for none
   */
  public Judged yard(Situation now, int named) {
    return judged(now, handOver(now, named));
  }

  /** What handing over costs on average when the yard is told a cause, −1 for none, in minutes. */
  public double handOver(Situation now, int named) {
    boolean has = named >= 0 && model.mends().get(named).canBeNamed();
    double right = has ? now.chances()[named] : 0;
    return model.yardMinutes() + (1 - right) * model.searchMinutes();
  }

  /** The likeliest cause that has a name; −1 where none has. */
  public int likeliest(Situation now) {
    double[] chances = now.chances();
    int likeliest = -1;
    for (int cause = 0; cause < chances.length; cause++) {
      MendEffort mend = model.mends().get(cause);
      if (mend.canBeNamed() && (likeliest < 0 || chances[cause] > chances[likeliest])) {
        likeliest = cause;
      }
    }
    return likeliest;
  }

  private Judged judged(Situation now, Action action, int index, double further) {
    double given =
        advice(now).options().stream()
            .filter(option -> option.action() == action && option.index() == index)
            .mapToDouble(Option::expectedMinutes)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return judged(now, isPassed(now) ? Math.min(given, further) : further);
  }

  /** Whether safety demands nothing more; the advice's other figures hold only then. */
  private boolean isPassed(Situation now) {
    return model.demanded(now.asked()) < 0;
  }

  private Judged judged(Situation now, double minutes) {
    Advice advice = advice(now);
    double best = expected(now);
    return new Judged(advice.best(), best, minutes, Math.max(0, best - advice.atLeast()));
  }

  private double after(Situation now, Option option) {
    return option.minutes()
        + switch (option.action()) {
          case CHECK -> ways(onward.ofCheck(now, option.index()));
          case MEND -> ways(onward.ofMend(now, option.index()));
          case YARD -> 0;
        };
  }

  private double ways(List<Onward.Way> ways) {
    return ways.stream().mapToDouble(way -> way.chance() * planned(way.then())).sum();
  }

  private double planned(Situation then) {
    return advice(then).best().expectedMinutes();
  }

  private static List<Object> key(Situation now) {
    return List.of(
        Arrays.stream(now.chances()).mapToObj(chance -> Math.round(chance * ROUNDING)).toList(),
        now.open(),
        now.asked(),
        now.tried());
  }
}
