package limberboard.trace;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import limberboard.trace.Advice.Action;
import limberboard.trace.Advice.Grounds;
import limberboard.trace.Advice.Option;

/**
 * Asks what the yard would ask anyway before a fault is handed over undiagnosed.
 *
 * <p>By effort alone the yard can be the cheapest step from the first moment on, or as soon as the
 * likeliest mends are its own; but whoever hands over a fault should be able to say what it
 * probably is. So where another policy advises the yard and no cause stands at {@link
 * Trace#SETTLED} yet, the owner's cheap checks that tell something come first, in the order of what
 * they tell per minute. A check is cheap when it costs at most one eighth of the yard's minutes,
 * access included; what it tells is the expected loss of entropy, in bits.
 */
public final class AskBeforeYard implements Policy {
  /** A check is cheap when it costs at most this share of the yard's minutes. */
  static final double CHEAP = 1.0 / 8;

  /** A check tells something from this many bits on. */
  static final double TELLS_SOMETHING = 0.01;

  private final Policy byEffort;

  /**
   * Makes the policy.
   *
   * @param byEffort advises everywhere else
   */
  public AskBeforeYard(Policy byEffort) {
    this.byEffort = byEffort;
  }

  @Override
  public Advice advise(EffortModel model, Situation now) {
    Advice advice = byEffort.advise(model, now);
    double[] chances = now.chances();
    boolean settled = Arrays.stream(chances).anyMatch(chance -> chance >= Trace.SETTLED);
    if (settled || advice.best().action() != Action.YARD) {
      return advice;
    }
    double limit = model.yardMinutes() * CHEAP;
    List<Option> asked =
        advice.options().stream()
            .filter(option -> option.action() == Action.CHECK && option.minutes() <= limit)
            .map(option -> new Told(option, bits(model, chances, option.index())))
            .filter(told -> told.bits() >= TELLS_SOMETHING)
            .sorted(Comparator.comparingDouble(Told::perMinute).reversed())
            .map(Told::option)
            .toList();
    Set<Option> first = Set.copyOf(asked);
    Stream<Option> others = advice.options().stream().filter(option -> !first.contains(option));
    return new Advice(
        Stream.concat(asked.stream().map(option -> option.on(Grounds.TELL_THE_YARD)), others)
            .toList());
  }

  /** A check with what it tells; equals stay in the order of the advice. */
  private record Told(Option option, double bits) {
    double perMinute() {
      return bits / option.minutes();
    }
  }

  /** What a check is expected to tell about the cause, in bits. */
  static double bits(EffortModel model, double[] chances, int check) {
    AnswerModel answers = model.answers();
    double told = entropy(chances, 1);
    double[] joint = new double[chances.length];
    for (int answer = 0; answer < answers.answers(check); answer++) {
      double chance = 0;
      for (int cause = 0; cause < joint.length; cause++) {
        joint[cause] = chances[cause] * answers.likelihood(check, answer, cause);
        chance += joint[cause];
      }
      told -= entropy(joint, chance);
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
