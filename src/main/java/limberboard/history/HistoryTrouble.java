package limberboard.history;

import java.io.IOException;
import limberboard.library.file.FileTrouble;
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

  /**
   * What a failure of the disk comes to: what is told already stays as it is, anything else means
   * that the history could not be read or written.
   */
  public static PlainTrouble of(IOException failure) {
    return failure instanceof PlainTrouble told
        ? told
        : new HistoryTrouble(
            "the history could not be read or written: " + FileTrouble.reason(failure),
            "mend that and try again; nothing that you wrote is lost");
  }
}
