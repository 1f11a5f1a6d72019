package limberboard.trace.learning;

import java.util.Random;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;

/**
 * How often things happen in truth in an invented fleet: the pages' estimates times factors that
 * come from a seed. Each factor is e to the power of a normally distributed number, kept within
 * bounds, and depends on the seed and the name of what it is for alone.
 *
 * <ul>
 *   <li>how common a symptom is: spread {@value #SYMPTOM_SPREAD}, from 1/8 to 8;
 *   <li>a cause's weight: spread {@value #CAUSE_SPREAD}, from 1/5 to 5;
 *   <li>an answer's likelihood under a cause, before they are brought to 1: spread {@value
 *       #ANSWER_SPREAD}, from 1/2 to 2;
 *   <li>a procedure's minutes: spread {@value #MINUTES_SPREAD}, from 1/2 to 2.
 * </ul>
 *
 * @param seed what the factors come from
 */
record HiddenTruth(long seed) {
  static final double SYMPTOM_SPREAD = 1.0;
  static final double CAUSE_SPREAD = 1.0;
  static final double ANSWER_SPREAD = 0.4;
  static final double MINUTES_SPREAD = 0.3;
  private static final double MOST_SYMPTOM = 8;
  private static final double MOST_CAUSE = 5;
  private static final double MOST_OTHER = 2;

  /** How common a symptom is against the others. */
  double symptom(String id) {
    return factor("symptom " + id, SYMPTOM_SPREAD, MOST_SYMPTOM);
  }

  /** How common a cause is against the others of its symptom, before the boat's own factors. */
  double weight(String symptom, Cause cause) {
    return cause.weight() * factor(symptom + " " + cause.id(), CAUSE_SPREAD, MOST_CAUSE);
  }

  /** How likely each answer to a check is under a cause. */
  double[] answers(String symptom, Check check, String cause) {
    double[] shares = check.chances(check.mentions(cause) ? cause : Check.OTHERS);
    double sum = 0;
    for (int i = 0; i < shares.length; i++) {
      String name = symptom + " " + check.id() + " " + cause + " " + check.answers().get(i);
      shares[i] *= factor(name, ANSWER_SPREAD, MOST_OTHER);
      sum += shares[i];
    }
    for (int i = 0; i < shares.length; i++) {
      shares[i] /= sum;
    }
    return shares;
  }

  /** How many times what its page says a procedure takes. */
  double minutes(String procedure) {
    return factor("minutes " + procedure, MINUTES_SPREAD, MOST_OTHER);
  }

  private double factor(String name, double spread, double most) {
    double drawn = new Random(seed * 31 + name.hashCode()).nextGaussian();
    return Math.max(1 / most, Math.min(most, StrictMath.exp(spread * drawn)));
  }
}
