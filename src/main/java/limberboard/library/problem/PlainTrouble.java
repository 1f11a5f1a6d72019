package limberboard.library.problem;

import java.io.IOException;

/**
 * Something that cannot be done, in words for its reader: what is wrong, and what to do about it.
 */
public abstract class PlainTrouble extends IOException {
  private static final long serialVersionUID = 1L;
  private final String right;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right, or how to go on
   */
  protected PlainTrouble(String wrong, String right) {
    super(wrong);
    this.right = right;
  }

  /** What is wrong; of a file, to follow its name. */
  public final String wrong() {
    return getMessage();
  }

  /** What would be right, or how to go on. */
  public final String right() {
    return right;
  }
}
