package limberboard.notes;

import limberboard.library.problem.PlainTrouble;

/** A note that cannot be kept, in words for its writer. */
public final class NoteTrouble extends PlainTrouble {
  private static final long serialVersionUID = 1L;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right
   */
  public NoteTrouble(String wrong, String right) {
    super(wrong, right);
  }
}
