package limberboard.drill.mark;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How sure somebody was of a cause, and whether it was that.
 *
 * @param said the chance said, 0 to 1
 * @param right whether it was the cause
 * @param known the chance by what was known at that moment, 0 to 1
 */
public record Certainty(double said, boolean right, double known) {
  private static final double LEAST = 0.005;

  /**
   * Checks the chance.
   *
   * @throws IllegalArgumentException when it is not from 0 to 1
   */
  public Certainty {
    if (!(said >= 0 && said <= 1)) {
      throw new IllegalArgumentException("a chance is from 0 to 1, not " + said);
    }
  }

  /**
   * Brier's score of the two classes <i>it is this</i> and <i>it is not</i>, halved as is usual for
   * two classes: from 0, the best, to 1. Somebody who says 50 % each time has 0.25.
   *
   * @return empty when nothing was said
   */
  public static OptionalDouble brier(List<Certainty> all) {
    return all.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            BrierScore.of(
                    all.stream().map(each -> new double[] {each.said, 1 - each.said}).toList(),
                    all.stream().map(each -> each.right ? 0 : 1).toList())
                / 2);
  }

  /**
   * The logarithmic score (I. J. Good, <i>Rational decisions</i>, 1952): the mean of <i>−ln</i> of
   * the chance said of what it was; 0 is best, somebody who says 50 % each time has 0.693.
   * Certainty counts as 99.5 %, since per cent are whole and being certain and wrong would cost
   * without end.
   *
   * @return empty when nothing was said
   */
  public static OptionalDouble logarithmic(List<Certainty> all) {
    return all.stream().mapToDouble(Certainty::surprise).average();
  }

  private double surprise() {
    double ofWhatItWas = right ? said : 1 - said;
    return -Math.log(Math.max(LEAST, Math.min(1 - LEAST, ofWhatItWas)));
  }
}
