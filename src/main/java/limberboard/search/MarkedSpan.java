package limberboard.search;

/**
 * A marked stretch of a text, in {@code char}s from 0.
 *
 * @param start of its first character
 * @param end after its last character, greater than {@code start}
 */
public record MarkedSpan(int start, int end) {
  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException when it is empty or begins before 0
   */
  public MarkedSpan {
    if (start < 0 || end <= start) {
      throw new IllegalArgumentException("a mark runs forward from 0: " + start + " to " + end);
    }
  }
}
