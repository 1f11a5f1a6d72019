package limberboard.search;

/**
 * The optimal string alignment distance of two words: how many letters to insert, delete, change or
 * swap with a neighbour. Defined in F. J. Damerau, <i>A technique for computer detection and
 * correction of spelling errors</i>, CACM 7(3), 1964.
 */
final class Edits {
  private Edits() {}

  /** The number of edits between two words, 0 when they are equal. */
  static int between(String one, String other) {
    int[][] cost = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, i, j, one, other);
      }
    }
    return cost[one.length()][other.length()];
  }

  private static int cheapest(int[][] cost, int i, int j, String one, String other) {
    int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
    int least = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + change);
    boolean swapped =
        i > 1
            && j > 1
            && one.charAt(i - 1) == other.charAt(j - 2)
            && one.charAt(i - 2) == other.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
