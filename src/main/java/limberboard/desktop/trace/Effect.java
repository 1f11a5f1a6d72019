package limberboard.desktop.trace;

import java.util.Optional;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.StepOutcome;
import limberboard.words.Sentences;

/**
 * What one way a step can turn out would do. Immutable.
 *
 * @param found what is found, in words
 * @param chance how likely that is, 0 to 1
 * @param leading the likeliest cause then; none when the fault is mended
 * @param next what would come next; none when the fault is mended
 * @param minutes what it would cost on average from there
 */
public record Effect(
    String found,
    double chance,
    Optional<RankedCause> leading,
    Optional<NextStep> next,
    double minutes) {

  /** Works it out; takes as long as planning the step after it. */
  static Effect of(StepOutcome outcome) {
    return new Effect(
        Sentences.capital(outcome.finding().words()),
        outcome.chance(),
        outcome.then().map(then -> then.ranking().get(0)),
        outcome.then().map(then -> then.next()),
        outcome.then().map(then -> then.expectedMinutes()).orElse(0.0));
  }
}
