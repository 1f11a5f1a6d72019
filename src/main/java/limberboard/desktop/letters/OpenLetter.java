package limberboard.desktop.letters;

import java.util.Optional;
import limberboard.letters.inbox.LetterNote;

/**
 * A letter that is open. Immutable.
 *
 * @param name its file's name
 * @param understood how it is understood
 * @param note what is noted of it
 * @param trouble what is wrong with what is noted of it; nothing is noted then
 */
record OpenLetter(
    String name, Understanding understood, LetterNote note, Optional<String> trouble) {
  /** The same with something else noted. */
  OpenLetter noting(LetterNote other) {
    return new OpenLetter(name, understood.saying(other.said()), other, trouble);
  }
}
