package limberboard.history;

import java.io.IOException;

/** Something of the history or of sharing that cannot be done, in words for its reader. */
public final class HistoryTrouble extends IOException {
  private static final long serialVersionUID = 1L;
  private final String right;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right, or how to go on
   */
  public HistoryTrouble(String wrong, String right) {
    super(wrong);
    this.right = right;
  }

  /** What is wrong. */
  public String wrong() {
    return getMessage();
  }

  /** What would be right, or how to go on. */
  public String right() {
    return right;
  }
}
