package limberboard.cases;

import java.util.HashMap;
import java.util.Map;

/**
 * Whether a share rises from group to group: the test of Cochran (1954) and Armitage (1955) for a
 * linear trend in proportions, with its exact form for few cases, conditional on how many there are
 * in all.
 *
 * @param scores what each group stands for, such as 0, 1, 2 for seasons
 * @param found how many in each group have it
 * @param all how many each group has, none fewer than {@code found}
 */
record TrendTest(double[] scores, int[] found, int[] all) {
  /** Checks that there is one of each for every group. */
  TrendTest {
    if (scores.length != found.length || scores.length != all.length) {
      throw new IllegalArgumentException("each group has a score, what was found, and all");
    }
  }

  /** The statistic, normally distributed with many cases; 0 where nothing can be said. */
  double z() {
    double n = 0;
    double x = 0;
    double trend = 0;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < all.length; i++) {
      n += all[i];
      x += found[i];
      trend += scores[i] * found[i];
      sum += scores[i] * all[i];
      squares += scores[i] * scores[i] * all[i];
    }
    double share = x / n;
    double variance = share * (1 - share) * (squares - sum * sum / n);
    return variance > 0 ? (trend - share * sum) / Math.sqrt(variance) : 0;
  }

  /**
   * The chance of a trend at least as strong upward if the share were the same in all groups:
   * everything that can happen with the same sums is gone through.
   */
  double rising() {
    Map<Long, Map<Integer, Double>> ways = new HashMap<>();
    ways.put(0L, Map.of(0, 1.0));
    for (int group = 0; group < all.length; group++) {
      Map<Long, Map<Integer, Double>> next = new HashMap<>();
      for (Map.Entry<Long, Map<Integer, Double>> trend : ways.entrySet()) {
        for (Map.Entry<Integer, Double> count : trend.getValue().entrySet()) {
          double choices = 1;
          for (int k = 0; k <= all[group]; k++) {
            next.computeIfAbsent(
                    trend.getKey() + Math.round(scores[group] * k), unseen -> new HashMap<>())
                .merge(count.getKey() + k, count.getValue() * choices, Double::sum);
            choices = choices * (all[group] - k) / (k + 1);
          }
        }
      }
      ways = next;
    }
    int x = 0;
    long observed = 0;
    for (int i = 0; i < all.length; i++) {
      x += found[i];
      observed += Math.round(scores[i] * found[i]);
    }
    double asMuch = 0;
    double any = 0;
    for (Map.Entry<Long, Map<Integer, Double>> trend : ways.entrySet()) {
      double count = trend.getValue().getOrDefault(x, 0.0);
      any += count;
      asMuch += trend.getKey() >= observed ? count : 0;
    }
    return asMuch / any;
  }
}
