package limberboard.letters.reply;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.recognise.Recognised;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.trace.Trace;

/**
 * What there is to answer to a letter. Immutable.
 *
 * @param recognition what was recognised in the letter by itself
 * @param earlier the letters of its conversation that it goes on from, the earliest first
 * @param boat the boat, where this letter or an earlier one surely says which
 * @param model the model, likewise
 * @param fitting the boat on the day of the answer, or one of the model that nobody has entered
 * @param symptoms what it may tell of, the likeliest first; a symptom of the conversation that this
 *     letter does not tell of in words of its own has no words
 * @param faults the faults that are answered, with all that was told of them
 * @param traces their traces, in the same order; fewer where a symptom is not for the boat
 * @param toAnswer what a draft of the answer is made of
 */
public record Reply(
    Recognition recognition,
    List<KeptLetter> earlier,
    Optional<Recognised> boat,
    Optional<Recognised> model,
    Optional<Fitting> fitting,
    List<Suspect> symptoms,
    List<ToldFault> faults,
    List<Trace> traces,
    ToAnswer toAnswer) {
  /** Copies the lists. */
  public Reply {
    earlier = List.copyOf(earlier);
    symptoms = List.copyOf(symptoms);
    faults = List.copyOf(faults);
    traces = List.copyOf(traces);
  }

  /** Whether the letter tells of a fault, by itself or as part of its conversation. */
  public boolean isFault() {
    return recognition.fault() || !faults.isEmpty();
  }
}
