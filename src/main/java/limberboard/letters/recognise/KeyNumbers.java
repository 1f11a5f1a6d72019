package limberboard.letters.recognise;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;

/**
 * The keys that at least two of some texts have, numbered from 0, and how rare each is among them
 * (G. Salton and C. Buckley, Term-weighting approaches in automatic text retrieval, Information
 * Processing and Management 24(5), 1988): what texts are as numbers. Immutable.
 */
final class KeyNumbers {
  private static final int LEAST_MET = 2;

  private final Map<String, Integer> numbers = new HashMap<>();
  private final double[] rarity;

  /**
   * A text as numbers.
   *
   * @param keys the numbers of what it has, ascending
   * @param values how much each counts
   */
  record Numbers(int[] keys, double[] values) {}

  /**
   * Numbers the keys of texts, each of which counts once.
   *
   * @param keys gives what a text has
   */
  <T> KeyNumbers(List<T> texts, Function<T, Set<String>> keys) {
    this(texts, keys, text -> 1);
  }

  /**
   * Numbers the keys of texts.
   *
   * @param keys gives what a text has
   * @param times gives how often a text counts, 1 or more
   */
  <T> KeyNumbers(List<T> texts, Function<T, Set<String>> keys, ToIntFunction<T> times) {
    Map<String, Integer> met = new HashMap<>();
    for (T text : texts) {
      int counts = times.applyAsInt(text);
      keys.apply(text).forEach(key -> met.merge(key, counts, Integer::sum));
    }
    int all = texts.stream().mapToInt(times).sum();
    List<String> known = new ArrayList<>(met.keySet());
    known.removeIf(key -> met.get(key) < LEAST_MET);
    Collections.sort(known);
    known.forEach(key -> numbers.put(key, numbers.size()));
    rarity = new double[known.size()];
    for (int i = 0; i < rarity.length; i++) {
      rarity[i] = Math.log(1 + (double) all / met.get(known.get(i)));
    }
  }

  /** The same keys in little room: thousands of texts share most of theirs. */
  static Set<String> littleRoom(Set<String> keys) {
    return keys.stream().map(String::intern).collect(Collectors.toUnmodifiableSet());
  }

  /** How many keys there are. */
  int size() {
    return rarity.length;
  }

  /** The number of a key; none of one that is not known. */
  OptionalInt of(String key) {
    Integer number = numbers.get(key);
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** How rare the key of a number is, more than 0. */
  double rarity(int number) {
    return rarity[number];
  }

  /**
   * A text as numbers, each as large as its key is rare, together of length 1 or less.
   *
   * @param shortest what its squares come to at least, so that few keys say little; 0 or more
   */
  Numbers of(Collection<String> keys, double shortest) {
    int[] all =
        keys.stream().filter(numbers::containsKey).mapToInt(numbers::get).sorted().toArray();
    double[] values = new double[all.length];
    double sum = 0;
    for (int i = 0; i < all.length; i++) {
      values[i] = rarity[all[i]];
      sum += values[i] * values[i];
    }
    double length = Math.sqrt(shortest + sum);
    for (int i = 0; i < all.length; i++) {
      values[i] /= length;
    }
    return new Numbers(all, values);
  }
}
