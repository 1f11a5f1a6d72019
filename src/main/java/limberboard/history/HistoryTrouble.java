package limberboard.history;

import limberboard.library.problem.PlainTrouble;

/** Something of the history or of sharing that cannot be done, in words for its reader. */
public final class HistoryTrouble extends PlainTrouble {
  private static final long serialVersionUID = 1L;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right, or how to go on
   */
  public HistoryTrouble(String wrong, String right) {
    super(wrong, right);
  }
}
