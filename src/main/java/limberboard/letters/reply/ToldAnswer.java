package limberboard.letters.reply;

import java.util.Optional;

/**
 * What an owner has told of a check, in one of the letters of a conversation.
 *
 * @param check the check
 * @param answer its answer, as in the file; empty: it could not be told
 * @param letter the name of the earlier letter that says so; empty for the letter that is answered
 * @param before what an earlier letter had said instead, if it said something else
 */
public record ToldAnswer(
    String check, Optional<String> answer, String letter, Optional<String> before) {
  /** Whether a later letter said something else than an earlier one. */
  public boolean isChanged() {
    return before.isPresent();
  }

  /** Whether the letter that is answered says so itself. */
  public boolean isNow() {
    return letter.isEmpty();
  }
}
