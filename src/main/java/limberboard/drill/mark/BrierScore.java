package limberboard.drill.mark;

import java.util.List;

/**
 * G. W. Brier's score of said chances, <i>Verification of forecasts expressed in terms of
 * probability</i>, Monthly Weather Review 78(1), 1950: the mean, over all forecasts, of the sum
 * over the classes of <i>(said − happened)²</i>. 0 is best, 2 worst.
 */
public final class BrierScore {
  private BrierScore() {}

  /**
   * The score as in the paper.
   *
   * @param forecasts for each forecast the chance said of each class, 0 to 1
   * @param happened for each forecast the number of the class that happened
   * @throws IllegalArgumentException when there are none, or their numbers differ
   */
  public static double of(List<double[]> forecasts, List<Integer> happened) {
    if (forecasts.isEmpty() || forecasts.size() != happened.size()) {
      throw new IllegalArgumentException("every forecast needs what happened, and there is one");
    }
    double sum = 0;
    for (int i = 0; i < forecasts.size(); i++) {
      double[] said = forecasts.get(i);
      for (int each = 0; each < said.length; each++) {
        double off = said[each] - (happened.get(i) == each ? 1 : 0);
        sum += off * off;
      }
    }
    return sum / forecasts.size();
  }
}
