package limberboard.effort;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;

/**
 * Asks until a cause is found, then mends it: what somebody does who follows a list of questions.
 * Rules to measure a {@link Planner} by, not to use.
 *
 * <p>While no cause stands at the wanted chance, the next check is made; then the likeliest cause
 * is mended, by the yard where it is the yard's work. When the questions run out it goes on as
 * {@link MendsOnly} does. Checks that are the yard's work are passed over.
 */
public final class Questionnaire implements Policy {
  private static final double TELLS_SOMETHING = 0.01;

  private final Order order;
  private final double found;

  /** In what order the questions come. */
  public enum Order {
    /** As they stand in the file. */
    OF_THE_FILE,
    /** The one that tells the most bits first, whatever it costs. */
    MOST_TELLING_FIRST
  }

  /**
   * Makes the policy.
   *
   * @param order in what order the questions come
   * @param found a cause with at least this chance counts as found, 0 to 1
   */
  public Questionnaire(Order order, double found) {
    this.order = order;
    this.found = found;
  }

  @Override
  public Advice advise(EffortModel model, Situation now) {
    Option option =
        SafetyFirst.option(model, now)
            .or(() -> mendWhatIsFound(model, now))
            .or(() -> question(model, now))
            .orElseGet(() -> MendsOnly.next(model, now));
    return new Advice(List.of(option), 0);
  }

  private Optional<Option> mendWhatIsFound(EffortModel model, Situation now) {
    double[] chances = now.chances();
    int leading = 0;
    for (int cause = 1; cause < chances.length; cause++) {
      leading = chances[cause] > chances[leading] ? cause : leading;
    }
    if (chances[leading] < found || now.tried().get(leading)) {
      return Optional.empty();
    }
    double yard = model.handOver(chances);
    double cost = model.mendMinutes(leading, now.open());
    return Optional.of(
        model.mends().get(leading).byOwner()
            ? new Option(Action.MEND, leading, cost, Double.NaN, Grounds.EFFORT)
            : new Option(Action.YARD, 0, yard, yard, Grounds.EFFORT));
  }

  private Optional<Option> question(EffortModel model, Situation now) {
    double[] chances = now.chances();
    double most = order == Order.OF_THE_FILE ? Double.NEGATIVE_INFINITY : TELLS_SOMETHING;
    Optional<Option> best = Optional.empty();
    for (int check = 0; check < model.checks().size(); check++) {
      if (!now.asked().get(check) && model.checks().get(check).minutes() < model.yardMinutes()) {
        Option option = SafetyFirst.check(model, now, check, Grounds.EFFORT);
        if (order == Order.OF_THE_FILE) {
          return Optional.of(option);
        }
        double bits = bits(model, chances, check);
        if (bits >= most) {
          most = bits;
          best = Optional.of(option);
        }
      }
    }
    return best;
  }

  /**
   * What a check is expected to tell about the cause: the loss of entropy, in bits.
   *
   * @param model the fault
   * @param chances the causes' chances now
   * @param check number of the check
   */
  static double bits(EffortModel model, double[] chances, int check) {
    AnswerModel answers = model.answers();
    double told = entropy(chances, 1);
    double[] joint = new double[chances.length];
    for (int answer = 0; answer < answers.answers(check); answer++) {
      for (int cause = 0; cause < joint.length; cause++) {
        joint[cause] = chances[cause] * answers.likelihood(check, answer, cause);
      }
      told -= entropy(joint, Arrays.stream(joint).sum());
    }
    return told * (1 - model.checks().get(check).cantTell());
  }

  /** The entropy of weights that sum to {@code sum}, times that sum. */
  private static double entropy(double[] weights, double sum) {
    double bits = 0;
    for (double weight : weights) {
      if (weight > 0) {
        bits -= weight * Math.log(weight / sum) / Math.log(2);
      }
    }
    return bits;
  }
}
