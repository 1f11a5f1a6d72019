package limberboard.moving;

import java.io.IOException;

/** An archive that is not taken, or cannot be made, in words for its reader. */
public final class ArchiveTrouble extends IOException {
  private static final long serialVersionUID = 1L;
  private final String right;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right
   */
  public ArchiveTrouble(String wrong, String right) {
    super(wrong);
    this.right = right;
  }

  /** What is wrong. */
  public String wrong() {
    return getMessage();
  }

  /** What would be right. */
  public String right() {
    return right;
  }
}
