package limberboard.boat;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One traced fault and what turned out to be the cause. It holds the boat's facts and no personal
 * data, unless somebody chose to keep it.
 *
 * @param id file name without ending
 * @param symptom symptom id
 * @param cause cause id of that symptom, or {@code something-else}; empty while nobody knows
 * @param date the day it was settled, or of an open case the day it was begun
 * @param boat the boat's facts
 * @param answers check id to answer
 * @param cantTell ids of checks that were asked and could not be told
 * @param end how it ended
 * @param note what was learnt
 */
public record RecordedCase(
    String id,
    String symptom,
    Optional<String> cause,
    LocalDate date,
    CaseBoat boat,
    Map<String, String> answers,
    List<String> cantTell,
    CaseEnd end,
    String note) {
  /** Copies the collections. */
  public RecordedCase {
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    cantTell = List.copyOf(cantTell);
  }

  /** A case of a known cause, of whose end nothing else is known. */
  public RecordedCase(
      String id,
      String symptom,
      String cause,
      LocalDate date,
      String model,
      OptionalInt built,
      Map<String, String> answers,
      String note) {
    this(
        id,
        symptom,
        Optional.of(cause),
        date,
        CaseBoat.of(model, built),
        answers,
        List.of(),
        CaseEnd.UNKNOWN,
        note);
  }

  /**
   * The cause, where the case tells it: not while it is open, and not where its mend did not cure.
   */
  public Optional<String> provenCause() {
    return cause.filter(known -> end.outcome().map(RecordedCase::proves).orElse(true));
  }

  private static boolean proves(CaseOutcome outcome) {
    return outcome == CaseOutcome.MENDED || outcome == CaseOutcome.HANDED_OVER;
  }

  /** Whether somebody has still to complete it. */
  public boolean isOpen() {
    return end.outcome().map(CaseOutcome.OPEN::equals).orElse(false);
  }

  /** The same under another id. */
  public RecordedCase named(String other) {
    return new RecordedCase(other, symptom, cause, date, boat, answers, cantTell, end, note);
  }

  /** The same with another end. */
  public RecordedCase ended(Optional<String> proven, CaseEnd other) {
    return new RecordedCase(id, symptom, proven, date, boat, answers, cantTell, other, note);
  }

  /** The same with other answers. */
  public RecordedCase answered(Map<String, String> found, List<String> notTold) {
    return new RecordedCase(id, symptom, cause, date, boat, found, notTold, end, note);
  }

  /** The same with another note. */
  public RecordedCase noted(String other) {
    return new RecordedCase(id, symptom, cause, date, boat, answers, cantTell, end, other);
  }
}
