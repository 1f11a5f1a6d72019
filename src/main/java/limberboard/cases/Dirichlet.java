package limberboard.cases;

/**
 * Learning of shares from counts: a Dirichlet distribution over them, of which the mean is taken.
 *
 * <p>Before any count it has the parameters <i>strength × share</i>; each count adds 1, or its
 * weight, to its own parameter. The mean of the distribution is the parameters divided by their
 * sum: with <i>n</i> counts it lies between estimate and frequency, and comes to the frequency as
 * <i>n</i> grows.
 *
 * <p>A. Gelman and others, <i>Bayesian Data Analysis</i>, section on the multinomial model; with
 * two shares it is the beta distribution.
 */
public final class Dirichlet {
  private Dirichlet() {}

  /**
   * The mean after counts.
   *
   * @param estimate shares before, each 0 or more, summing to 1
   * @param strength how many counts the estimate is worth, greater than 0
   * @param counts for each share what was counted, 0 or more
   * @return shares that sum to 1
   * @throws IllegalArgumentException when there are more or fewer counts than shares
   */
  public static double[] mean(double[] estimate, double strength, double[] counts) {
    if (estimate.length != counts.length) {
      throw new IllegalArgumentException(
          counts.length + " counts for " + estimate.length + " shares");
    }
    double all = strength;
    for (double count : counts) {
      all += count;
    }
    double[] mean = new double[estimate.length];
    for (int i = 0; i < mean.length; i++) {
      mean[i] = (strength * estimate[i] + counts[i]) / all;
    }
    return mean;
  }

  /**
   * How far apart two distributions are: the greatest difference between the chances that they give
   * any set, which is half the sum of the differences (total variation distance).
   *
   * @return 0, when they are the same, to 1
   * @throws IllegalArgumentException when they are not over the same things
   */
  public static double apart(double[] one, double[] other) {
    if (one.length != other.length) {
      throw new IllegalArgumentException(one.length + " shares beside " + other.length);
    }
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += Math.abs(one[i] - other[i]);
    }
    return sum / 2;
  }
}
