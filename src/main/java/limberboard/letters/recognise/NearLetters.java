package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.letters.recognise.WordRegression.Example;

/**
 * Which recorded letter is most like a letter, of each topic: the cosine between what both have,
 * each by how rare it is (G. Salton and C. Buckley, Term-weighting approaches in automatic text
 * retrieval, Information Processing and Management 24(5), 1988). The cost grows with the letters
 * that share words with it. Immutable.
 */
final class NearLetters {
  private final List<Example> letters;
  private final int topics;
  private final Map<String, List<Integer>> having = new HashMap<>();
  private final double[] lengths;

  NearLetters(List<Example> letters, int topics) {
    this.letters = List.copyOf(letters);
    this.topics = topics;
    for (int i = 0; i < letters.size(); i++) {
      for (String key : letters.get(i).keys()) {
        having.computeIfAbsent(key, each -> new ArrayList<>()).add(i);
      }
    }
    lengths = letters.stream().mapToDouble(each -> length(each.keys())).toArray();
  }

  private double rarity(String key) {
    List<Integer> with = having.get(key);
    return with == null ? 0 : Math.log(1 + (double) letters.size() / with.size());
  }

  private double length(Set<String> keys) {
    return Math.sqrt(1 + keys.stream().mapToDouble(key -> Math.pow(rarity(key), 2)).sum());
  }

  /** For each topic how like its most like letter is, 0 to 1. */
  double[] like(Set<String> keys) {
    double[] shared = new double[letters.size()];
    for (String key : keys) {
      double rare = rarity(key);
      having.getOrDefault(key, List.of()).forEach(letter -> shared[letter] += rare * rare);
    }
    double length = length(keys);
    double[] most = new double[topics];
    for (int i = 0; i < shared.length; i++) {
      double like = shared[i] / (length * lengths[i]);
      for (int topic : letters.get(i).topics()) {
        most[topic] = Math.max(most[topic], like);
      }
    }
    return most;
  }
}
