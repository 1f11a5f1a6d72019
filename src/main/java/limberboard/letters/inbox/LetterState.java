package limberboard.letters.inbox;

import limberboard.library.value.Word;

/** How far a letter has come. */
public enum LetterState implements Word {
  /** Nobody has answered it. */
  NEW,
  /** It was answered with a question, and the owner is to write back. */
  WAITING,
  /** It was answered. */
  ANSWERED,
  /** There is nothing more to do. */
  CLOSED;

  /** Whether somebody still has to look at it. */
  public boolean isOpen() {
    return this == NEW || this == WAITING;
  }
}
