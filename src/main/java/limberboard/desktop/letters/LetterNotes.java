package limberboard.desktop.letters;

import java.util.Optional;
import java.util.function.UnaryOperator;
import limberboard.letters.inbox.LetterFolder;
import limberboard.letters.inbox.LetterNote;
import limberboard.library.problem.Problem;

/** Keeps what is noted of letters. */
@FunctionalInterface
public interface LetterNotes {
  /** Keeps nothing, for pictures. */
  LetterNotes NONE = (name, change) -> Optional.empty();

  /**
   * Changes what is noted of a letter; not on the event thread.
   *
   * @param name the letter's file name
   * @return why it could not be changed; empty when it was
   */
  Optional<Problem> change(String name, UnaryOperator<LetterNote> change);

  /** Kept beside the letters of a folder. */
  static LetterNotes of(LetterFolder folder) {
    return folder::change;
  }
}
