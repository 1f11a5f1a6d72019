package limberboard.desktop.drills;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import limberboard.words.CountWords;

/**
 * The hands of a class for each step that was proposed. Immutable.
 *
 * @param hands how many, by what each step is called, in the order in which they were noted
 */
record ClassVote(Map<String, Integer> hands) {
  /** Nobody has voted. */
  static final ClassVote NONE = new ClassVote(Map.of());

  private static final int MOST = 999;
  private static final int TEN = 10;

  /** Copies the map, in its order. */
  ClassVote {
    hands = Collections.unmodifiableMap(new LinkedHashMap<>(hands));
  }

  /** With one more digit of the number of hands for a step; numbers end at {@value #MOST}. */
  ClassVote digit(String step, int digit) {
    int now = hands.getOrDefault(step, 0) * TEN + digit;
    return with(step, now > MOST ? digit : now);
  }

  /** Without the last digit of the number of hands for a step. */
  ClassVote back(String step) {
    return with(step, hands.getOrDefault(step, 0) / TEN);
  }

  private ClassVote with(String step, int number) {
    Map<String, Integer> all = new LinkedHashMap<>(hands);
    all.put(step, number);
    if (number == 0) {
      all.remove(step);
    }
    return new ClassVote(all);
  }

  /** The hands for a step. */
  int of(String step) {
    return hands.getOrDefault(step, 0);
  }

  /** The steps with the most hands: none before anybody voted, several when it is a tie. */
  List<String> most() {
    int most = hands.values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return hands.entrySet().stream()
        .filter(each -> each.getValue() == most)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The most hands first. */
  String words() {
    return hands.entrySet().stream()
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
        .map(each -> CountWords.of(each.getValue(), "hand") + ": " + each.getKey())
        .collect(Collectors.joining("\n"));
  }
}
