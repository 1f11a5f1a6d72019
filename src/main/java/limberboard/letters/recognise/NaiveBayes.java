package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * The yardstick beside which recognising is measured: multinomial naive Bayes with one added to
 * each count (A. McCallum and K. Nigam, A comparison of event models for naive Bayes text
 * classification, AAAI-98 workshop on learning for text categorization, 1998), over the words of
 * recorded letters alone. Immutable.
 */
final class NaiveBayes {
  private final Map<String, double[]> counts = new HashMap<>();
  private final double[] sums;
  private final double[] letters;

  /**
   * Learns.
   *
   * @param topics the number of topics
   */
  NaiveBayes(List<Example> examples, int topics) {
    sums = new double[topics];
    letters = new double[topics];
    for (Example example : examples) {
      for (int topic : example.topics()) {
        letters[topic]++;
        for (String key : single(example.keys())) {
          counts.computeIfAbsent(key, each -> new double[topics])[topic]++;
          sums[topic]++;
        }
      }
    }
  }

  /** The words without those that stand for two: they would be far more than the letters. */
  private static Set<String> single(Set<String> keys) {
    Set<String> single = new HashSet<>(keys);
    single.removeIf(key -> key.contains(" "));
    return single;
  }

  /** All topics, the likeliest first. */
  List<Integer> ranked(Set<String> keys) {
    Set<String> known = single(keys);
    known.retainAll(counts.keySet());
    double[] odds = new double[letters.length];
    List<Integer> topics = new ArrayList<>();
    for (int topic = 0; topic < odds.length; topic++) {
      odds[topic] = Math.log(1 + letters[topic]);
      for (String key : known) {
        odds[topic] += Math.log((1 + counts.get(key)[topic]) / (sums[topic] + counts.size()));
      }
      topics.add(topic);
    }
    topics.sort(Comparator.<Integer>comparingDouble(topic -> odds[topic]).reversed());
    return topics;
  }
}
