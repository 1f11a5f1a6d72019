package limberboard.effort;

import java.util.Arrays;

/** Brings weights to chances that sum to 1. */
public final class Normalised {
  private Normalised() {}

  /**
   * Divides weights by their sum.
   *
   * @throws IllegalArgumentException when there are none, one is negative or not finite, or all are
   *     0
   */
  public static double[] ofOne(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      if (!(weight >= 0) || Double.isInfinite(weight)) {
        throw new IllegalArgumentException("a weight is a number of 0 or more, not " + weight);
      }
      sum += weight;
    }
    if (!(sum > 0) || Double.isInfinite(sum)) {
      throw new IllegalArgumentException("the weights sum to " + sum + "; one must be above 0");
    }
    double[] shares = new double[weights.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = weights[i] / sum;
    }
    return shares;
  }

  /** Chances from logarithms of weights; where every weight is 0, a copy of the other shares. */
  public static double[] ofLogs(double[] logs, double[] otherwise) {
    double top = Arrays.stream(logs).max().orElse(Double.NEGATIVE_INFINITY);
    if (top == Double.NEGATIVE_INFINITY) {
      return otherwise.clone();
    }
    double[] weights = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      weights[i] = Math.exp(logs[i] - top);
    }
    return ofOne(weights);
  }
}
