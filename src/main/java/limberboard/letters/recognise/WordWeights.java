package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much each word speaks for each of some topics: the logarithm of how much more often it stands
 * there than elsewhere (naive Bayes with Dirichlet smoothing: C. Zhai and J. Lafferty, A study of
 * smoothing methods for language models, SIGIR 2001). Words that a topic never has weigh nothing,
 * so the cost of a text grows with its words and with the topics that have them. Immutable.
 */
final class WordWeights {
  private static final double LARGEST = 4;
  private static final double MET_SELDOM = 1.5;

  private final Map<String, List<Weight>> weights = new HashMap<>();

  /**
   * What a word says for a topic.
   *
   * @param topic the topic's number
   * @param weight more than 0, 4 at most
   */
  record Weight(int topic, double weight) {}

  /**
   * Weighs.
   *
   * @param counts for each topic how much each word counts there, more than 0
   * @param smoothing how many words of all topics together each topic is taken to have beside its
   *     own, more than 0
   */
  WordWeights(List<Map<String, Double>> counts, double smoothing) {
    Map<String, Double> shares = new HashMap<>();
    double[] sums = new double[counts.size()];
    for (int i = 0; i < sums.length; i++) {
      sums[i] = counts.get(i).values().stream().mapToDouble(Double::doubleValue).sum();
      double sum = Math.max(sums[i], 1);
      counts
          .get(i)
          .forEach((key, count) -> shares.merge(key, count / sum / counts.size(), Double::sum));
    }
    for (int i = 0; i < sums.length; i++) {
      for (Map.Entry<String, Double> each : counts.get(i).entrySet()) {
        double share = shares.get(each.getKey());
        double here = (each.getValue() + smoothing * share) / (sums[i] + smoothing);
        double weight = Math.min(LARGEST, Math.log(here / share));
        if (weight > 0) {
          weights
              .computeIfAbsent(each.getKey(), key -> new ArrayList<>())
              .add(new Weight(i, weight * evidence(each.getValue())));
        }
      }
    }
  }

  /** A word that was met once says less than one that was met often. */
  private static double evidence(double count) {
    return count / (count + MET_SELDOM);
  }

  /** What a word says, for each topic that has it. */
  List<Weight> of(String key) {
    return weights.getOrDefault(key, List.of());
  }
}
