package limberboard.effort;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.effort.Advice.Option;

/**
 * What it costs on average to follow a policy to the end, worked out exactly by going through
 * everything that can happen, each situation once. One object belongs to one thread.
 */
public final class Following {
  private static final double IMPOSSIBLE = 1e-12;
  private static final double ROUNDING = 1e12;

  private final EffortModel model;
  private final Policy policy;
  private final Map<List<Object>, Double> known = new HashMap<>();

  /**
   * Makes it.
   *
   * @param model what everything costs
   * @param policy what is followed
   */
  public Following(EffortModel model, Policy policy) {
    this.model = model;
    this.policy = policy;
  }

  /** Expected minutes from the beginning. */
  public double minutes() {
    return minutes(model.beginning());
  }

  /** Expected minutes from a situation on. */
  public double minutes(Situation now) {
    double[] chances = now.chances();
    List<Object> key =
        List.of(
            Arrays.stream(chances).mapToObj(chance -> Math.round(chance * ROUNDING)).toList(),
            now.open(),
            now.asked(),
            now.tried());
    Double before = known.get(key);
    if (before != null) {
      return before;
    }
    Option option = policy.advise(model, now).best();
    double minutes =
        option.minutes()
            + switch (option.action()) {
              case YARD -> 0;
              case MEND -> afterMend(now, option.index());
              case CHECK -> afterCheck(now, option.index());
            };
    known.put(key, minutes);
    return minutes;
  }

  private double afterMend(Situation now, int cause) {
    double[] weights = now.chances();
    double cured = weights[cause] * model.mends().get(cause).cures();
    if (cured > 1 - IMPOSSIBLE) {
      return 0;
    }
    weights[cause] -= cured;
    BitSet tried = now.tried();
    tried.set(cause);
    BitSet open = model.openAfterMend(cause, now.open());
    return (1 - cured)
        * minutes(new Situation(Normalised.ofOne(weights), open, now.asked(), tried));
  }

  private double afterCheck(Situation now, int check) {
    BitSet asked = now.asked();
    asked.set(check);
    BitSet open = model.openAfterCheck(check, now.open());
    double cantTell = model.checks().get(check).cantTell();
    double sum =
        cantTell > 0
            ? cantTell * minutes(new Situation(now.chances(), open, asked, now.tried()))
            : 0;
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double[] weights = now.chances();
      double chance = 0;
      for (int cause = 0; cause < weights.length; cause++) {
        weights[cause] *= model.answers().likelihood(check, answer, cause);
        chance += weights[cause];
      }
      if (chance > IMPOSSIBLE && cantTell < 1) {
        Situation then = new Situation(Normalised.ofOne(weights), open, asked, now.tried());
        sum += (1 - cantTell) * chance * minutes(then);
      }
    }
    return sum;
  }
}
