package limberboard.workings.sums;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Checked inputs, as a sum works with them.
 *
 * @param numbers input id to number, in the input's unit
 * @param words input id to word
 */
public record CheckedInputs(Map<String, Double> numbers, Map<String, String> words) {
  /** Copies the maps. */
  public CheckedInputs {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
  }

  /** The number of an input that has a usual value, in the input's unit. */
  public double number(String id) {
    return maybe(id).orElseThrow();
  }

  /** The number of an input, in the input's unit; empty when it was left out. */
  public OptionalDouble maybe(String id) {
    Double number = numbers.get(id);
    return number == null ? OptionalDouble.empty() : OptionalDouble.of(number);
  }

  /** The word of a choice. */
  public String word(String id) {
    return words.get(id);
  }
}
