package limberboard.letters.inbox;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a person said of a letter otherwise than the program saw it. Immutable.
 *
 * @param boat the id of the boat that it is about; {@link #NONE} when it is about none that is
 *     known
 * @param about what kind of answer it gets, as a word that its reader knows; empty for what was
 *     seen
 * @param symptoms the symptoms that it tells of
 * @param urgent what is dangerous now; an empty list when nothing is
 * @param answers for a symptom, check to answer; {@link #CANNOT_TELL}, or {@link #TAKEN_BACK} where
 *     what was read is not so
 */
public record LetterSaid(
    Optional<String> boat,
    Optional<String> about,
    Optional<List<String>> symptoms,
    Optional<List<String>> urgent,
    Map<String, Map<String, String>> answers) {
  /** The boat is none that is known. */
  public static final String NONE = "none";

  /** The owner could not tell. */
  public static final String CANNOT_TELL = "?";

  /** The letter does not say it. */
  public static final String TAKEN_BACK = "-";

  /** Nothing was said. */
  public static final LetterSaid NOTHING =
      new LetterSaid(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

  /** Copies the collections. */
  public LetterSaid {
    symptoms = symptoms.map(List::copyOf);
    urgent = urgent.map(List::copyOf);
    answers = Map.copyOf(answers);
  }

  /** The same about another boat; empty for what was seen. */
  public LetterSaid of(Optional<String> other) {
    return new LetterSaid(other, about, symptoms, urgent, answers);
  }

  /** The same with another kind of answer; empty for what was seen. */
  public LetterSaid answeredAs(Optional<String> kind) {
    return new LetterSaid(boat, kind, symptoms, urgent, answers);
  }

  /** The same with these symptoms. */
  public LetterSaid telling(List<String> ids) {
    return new LetterSaid(boat, about, Optional.of(ids), urgent, answers);
  }

  /** The same with these dangers. */
  public LetterSaid dangers(Optional<List<String>> what) {
    return new LetterSaid(boat, about, symptoms, what, answers);
  }

  /** The same with another answer to a check; empty for what was seen. */
  public LetterSaid answering(String symptom, String check, Optional<String> answer) {
    Map<String, Map<String, String>> all = new LinkedHashMap<>(answers);
    Map<String, String> given = new LinkedHashMap<>(all.getOrDefault(symptom, Map.of()));
    answer.ifPresentOrElse(said -> given.put(check, said), () -> given.remove(check));
    if (given.isEmpty()) {
      all.remove(symptom);
    } else {
      all.put(symptom, Map.copyOf(given));
    }
    return new LetterSaid(boat, about, symptoms, urgent, all);
  }
}
