package limberboard.moving;

import limberboard.library.problem.PlainTrouble;

/** An archive that is not taken, or cannot be made, in words for its reader. */
public final class ArchiveTrouble extends PlainTrouble {
  private static final long serialVersionUID = 1L;

  /**
   * A trouble.
   *
   * @param wrong what is wrong
   * @param right what would be right
   */
  public ArchiveTrouble(String wrong, String right) {
    super(wrong, right);
  }
}
