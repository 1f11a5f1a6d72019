package limberboard.letters.inbox;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is noted of a letter. Immutable.
 *
 * @param state how far it has come
 * @param since the day since when; empty while nobody has said
 * @param said what a person said of it otherwise than the program saw it
 * @param edits the pieces of its draft that a person has edited
 */
public record LetterNote(
    LetterState state, Optional<LocalDate> since, LetterSaid said, List<KeptEdit> edits) {
  /** Of a letter of which nothing is noted. */
  public static final LetterNote NEW =
      new LetterNote(LetterState.NEW, Optional.empty(), LetterSaid.NOTHING, List.of());

  /** Copies the list. */
  public LetterNote {
    edits = List.copyOf(edits);
  }

  /** The same in another state from a day on. */
  public LetterNote in(LetterState other, LocalDate day) {
    return new LetterNote(other, Optional.of(day), said, edits);
  }

  /** The same with something else said of the letter. */
  public LetterNote saying(LetterSaid other) {
    return new LetterNote(state, since, other, edits);
  }

  /** The same with other edited pieces. */
  public LetterNote editing(List<KeptEdit> pieces) {
    return new LetterNote(state, since, said, pieces);
  }
}
