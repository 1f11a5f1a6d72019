package limberboard.sharing;

import java.util.Optional;
import limberboard.history.Author;

/**
 * How to pull.
 *
 * @param author who records
 * @param settlement what was chosen for conflicts
 * @param with an address to keep as the remote where there is none yet
 * @param anyway whether to merge with a remote that was rewritten, or begun apart
 */
public record PullWish(
    Author author, Settlement settlement, Optional<String> with, boolean anyway) {
  /** With nothing chosen, from the remote there is. */
  public static PullWish by(Author author) {
    return new PullWish(author, Settlement.none(), Optional.empty(), false);
  }
}
