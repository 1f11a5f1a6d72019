package limberboard.desktop.letters;

import limberboard.desktop.base.Navigator;

/** Goes on with a letter where faults are traced. */
@FunctionalInterface
interface TraceOfLetter {
  /** Traces a symptom of a letter. */
  void go(Understanding letter, String symptom);

  /** The way there: with the letter's boat and answers, where a boat is known. */
  static TraceOfLetter by(Navigator navigator) {
    return (letter, symptom) ->
        letter
            .fitting()
            .ifPresent(boat -> navigator.trace(boat.boat().id(), symptom, letter.steps(symptom)));
  }
}
