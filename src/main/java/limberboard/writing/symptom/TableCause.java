package limberboard.writing.symptom;

import java.util.OptionalDouble;

/**
 * A cause as it stands in a header, finished or not. What is not there is empty.
 *
 * @param number its place in the page, from 0
 * @param id its id, which stays when it is called something else
 * @param title what it is called
 * @param weight how common it is against the others, as it is written
 * @param mend the id of its mend
 */
public record TableCause(int number, String id, String title, String weight, String mend) {
  /** Its weight as a number greater than 0; empty when it is none. */
  public OptionalDouble weighs() {
    return TypedFigures.positive(weight);
  }
}
