package limberboard.library.problem;

import java.util.Collection;
import java.util.Optional;

/** Finds what somebody probably meant to write. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word nearest to the given one, if it is near enough to be meant. Nothing is near to
   * what is longer than any name.
   */
  public static Optional<String> to(String word, Collection<String> known) {
    if (word.length() > Limits.NAME_CHARACTERS) {
      return Optional.empty();
    }
    String best = null;
    int least = Math.max(1, word.length() / 3) + 1;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - word.length()) >= least) {
        continue;
      }
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

  /**
   * The optimal string alignment distance of two words: the least number of letters to insert,
   * leave out, change, or swap with their neighbour; 0 when they are equal. Defined in F. J.
   * Damerau, <i>A technique for computer detection and correction of spelling errors</i>, CACM
   * 7(3), 1964.
   */
  public static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : step(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int step(int[][] cost, String a, String b, int i, int j) {
    int change = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
    int least = Math.min(change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
