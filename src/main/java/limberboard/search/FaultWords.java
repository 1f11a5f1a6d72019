package limberboard.search;

import java.util.Set;
import java.util.stream.Collectors;

/**
 * Words by which people say that something is wrong. Immutable.
 *
 * @param stems the stems of the words
 */
record FaultWords(Set<String> stems) {
  /** Copies the stems. */
  FaultWords {
    stems = Set.copyOf(stems);
  }

  /** The list that comes with the program. */
  static FaultWords english() {
    return new FaultWords(
        StopWords.read("fault-words.txt").stream()
            .map(Analysis::stem)
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** Whether a word, most likely meant, tells of a fault. */
  boolean tells(Reading reading) {
    return tells(reading.likeliestStem());
  }

  /** Whether a stem tells of a fault. */
  boolean tells(String stem) {
    return stems.contains(stem);
  }
}
