package limberboard.boat;

import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;

/**
 * One traced fault and what turned out to be the cause. It holds the boat's facts and no personal
 * data. Tracing counts symptom and cause; the rest is read and checked so that what is kept is
 * right when letters are answered from it.
 *
 * @param id file name without ending
 * @param symptom symptom id
 * @param cause cause id of that symptom, or {@code something-else}
 * @param date the day it was settled
 * @param model model id
 * @param built year of building, if known
 * @param answers check id to answer
 * @param note what was learnt
 */
public record RecordedCase(
    String id,
    String symptom,
    String cause,
    LocalDate date,
    String model,
    OptionalInt built,
    Map<String, String> answers,
    String note) {
  /** Copies the answers. */
  public RecordedCase {
    answers = Map.copyOf(answers);
  }
}
