package limberboard.library;

import java.util.Collection;
import java.util.Optional;

/** Finds what somebody probably meant to write. */
public final class Nearest {
  private Nearest() {}

  /** The known word nearest to the given one, if it is near enough to be meant. */
  public static Optional<String> to(String word, Collection<String> known) {
    String best = null;
    int least = Math.max(1, word.length() / 3) + 1;
    for (String candidate : known) {
      int distance = distance(word, candidate);
      if (distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  /** "did you mean x?", or the given advice when nothing is near. */
  public static String advice(String word, Collection<String> known, String otherwise) {
    return to(word, known).map(near -> "did you mean \"" + near + "\"?").orElse(otherwise);
  }

  /** Levenshtein's distance: the least number of letters to insert, leave out or change. */
  static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, Math.min(previous[j], row[j - 1]) + 1);
      }
      previous = row;
    }
    return previous[b.length()];
  }
}
