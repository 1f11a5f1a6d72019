package limberboard.letters.reply;

import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.Letter;

/**
 * A letter of a folder.
 *
 * @param name its file's name
 * @param letter the letter
 */
public record KeptLetter(String name, Letter letter) {
  /** Whether it is an answer of ours. */
  public boolean isOurs() {
    return letter.head().id().filter(AnswerId::isOurs).isPresent();
  }
}
