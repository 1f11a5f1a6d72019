package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;

/**
 * Where a step leads from a situation, by Bayes' rule and what is open then: one fault, as the
 * {@link Planner} reckons it.
 *
 * @param model what everything costs
 */
public record Onward(EffortModel model) {
  private static final double IMPOSSIBLE = 1e-12;

  /**
   * One way a step can turn out, after which the trace goes on.
   *
   * @param chance how likely that is, 0 to 1
   * @param then where it leads
   */
  public record Way(double chance, Situation then) {}

  /** After a check gave an answer. */
  public Situation answered(Situation now, int check, int answer) {
    return new Situation(
        Normalised.ofOne(weights(now, check, answer)),
        model.openAfterCheck(check, now.open()),
        with(now.asked(), check),
        now.tried());
  }

  /** After an answer that was given without making the check: nothing is opened for it. */
  public Situation told(Situation now, int check, int answer) {
    return new Situation(
        Normalised.ofOne(weights(now, check, answer)),
        now.open(),
        with(now.asked(), check),
        now.tried());
  }

  /** After a check that could not be told, or that was made once more. */
  public Situation notTold(Situation now, int check) {
    return new Situation(
        now.chances(),
        model.openAfterCheck(check, now.open()),
        with(now.asked(), check),
        now.tried());
  }

  /**
   * After a mend that did not cure. One that was tried before teaches nothing new.
   *
   * @throws IllegalArgumentException when it must have cured
   */
  public Situation notCured(Situation now, int cause) {
    double[] weights = now.chances();
    if (!now.tried().get(cause)) {
      weights[cause] *= 1 - model.mends().get(cause).cures();
    }
    return new Situation(
        Normalised.ofOne(weights),
        model.openAfterMend(cause, now.open()),
        now.asked(),
        with(now.tried(), cause));
  }

  /** After something was opened. */
  public Situation opened(Situation now, int access) {
    return new Situation(now.chances(), with(now.open(), access), now.asked(), now.tried());
  }

  /** How a check can turn out; one that was made before says the same again. */
  public List<Way> ofCheck(Situation now, int check) {
    if (now.asked().get(check)) {
      return List.of(new Way(1, notTold(now, check)));
    }
    CheckEffort effort = model.checks().get(check);
    List<Way> ways = new ArrayList<>();
    if (effort.cantTell() > 0) {
      ways.add(new Way(effort.cantTell(), notTold(now, check)));
    }
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double chance = (1 - effort.cantTell()) * sum(weights(now, check, answer));
      if (chance > IMPOSSIBLE) {
        ways.add(new Way(chance, answered(now, check, answer)));
      }
    }
    return List.copyOf(ways);
  }

  /** How a mend can turn out, but for the cure that ends the trace. */
  public List<Way> ofMend(Situation now, int cause) {
    MendEffort mend = model.mends().get(cause);
    double cured = now.tried().get(cause) ? 0 : now.chances()[cause] * mend.cures();
    return cured > 1 - IMPOSSIBLE ? List.of() : List.of(new Way(1 - cured, notCured(now, cause)));
  }

  private double[] weights(Situation now, int check, int answer) {
    double[] weights = now.chances();
    for (int cause = 0; cause < weights.length; cause++) {
      weights[cause] *= model.answers().likelihood(check, answer, cause);
    }
    return weights;
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  private static BitSet with(BitSet set, int number) {
    set.set(number);
    return set;
  }
}
