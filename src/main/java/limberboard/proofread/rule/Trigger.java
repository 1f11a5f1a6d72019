package limberboard.proofread.rule;

import java.util.List;
import java.util.Optional;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/**
 * Words of the trade that set a rule off, but where they are denied or excused by others in the
 * same sentence. Immutable.
 *
 * @param words any of them
 * @param unless words in the same sentence that excuse it
 * @param reach how many words before them can deny them
 */
record Trigger(List<Phrase> words, List<Phrase> unless, int reach) {

  /** A step that sets a rule off, and by which words. */
  record Place(TextPiece step, Phrase phrase) {}

  /** Copies the lists. */
  Trigger {
    words = List.copyOf(words);
    unless = List.copyOf(unless);
  }

  /** The same from words as they are written in the library's file. */
  static Trigger of(List<String> words, List<String> unless, int reach, Surroundings around) {
    return new Trigger(around.phrases(words), around.phrases(unless), reach);
  }

  /**
   * Whether words of it stand in a sentence and nothing excuses them, also where it denies them.
   */
  boolean isNamedIn(Sentence sentence) {
    return words.stream().anyMatch(sentence::has) && isNotExcusedIn(sentence);
  }

  /** The first of its words that set it off in a sentence. */
  Optional<Phrase> in(Sentence sentence) {
    return words.stream()
        .filter(phrase -> isMeant(phrase.in(sentence), sentence))
        .findFirst()
        .filter(phrase -> isNotExcusedIn(sentence));
  }

  /** The first step of some work that sets it off. */
  Optional<Place> firstIn(ReadWork job) {
    for (TextPiece step : job.steps()) {
      for (Sentence sentence : step.sentences()) {
        Optional<Phrase> phrase = in(sentence);
        if (phrase.isPresent()) {
          return Optional.of(new Place(step, phrase.get()));
        }
      }
    }
    return Optional.empty();
  }

  private boolean isMeant(int at, Sentence sentence) {
    return at >= 0 && !sentence.deniedBefore(at, reach);
  }

  private boolean isNotExcusedIn(Sentence sentence) {
    return unless.stream().noneMatch(sentence::has);
  }
}
