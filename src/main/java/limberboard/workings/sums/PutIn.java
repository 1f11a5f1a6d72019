package limberboard.workings.sums;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import limberboard.boat.Boat;
import limberboard.library.value.Amount;
import limberboard.words.Sentences;

/**
 * What a page or a person puts into a sum, in terms of a boat: what is known of the boat, and above
 * it quantities as they stand, words of choices, and measures of the boat's model.
 *
 * @param values input id to value
 * @param notes numbers that depend on the boat and are not known; the usual value stands for them
 */
public record PutIn(Map<String, Value> values, List<String> notes) {
  /** Copies the collections. */
  public PutIn {
    values = Map.copyOf(values);
    notes = List.copyOf(notes);
  }

  /**
   * Puts in.
   *
   * @param sum the sum
   * @param with input id to what is put in; ids that the sum does not know are kept, so that it can
   *     say so
   * @param boat the boat, or none
   */
  public static PutIn of(Sum sum, Map<String, Amount> with, Optional<Boat> boat) {
    Map<String, Value> values = new LinkedHashMap<>();
    boat.ifPresent(known -> values.putAll(sum.defaultsFor(known)));
    List<String> notes = new ArrayList<>();
    with.forEach(
        (id, amount) -> {
          Optional<Value> value = value(sum, id, amount, boat);
          value.ifPresent(known -> values.put(id, known));
          if (value.isEmpty()) {
            notes.add(missing(sum, id, ((Amount.Measured) amount).measure(), boat));
          }
        });
    return new PutIn(values, notes);
  }

  /** The value of an amount; empty when it is a measure that is not known. */
  private static Optional<Value> value(Sum sum, String id, Amount amount, Optional<Boat> boat) {
    if (amount instanceof Amount.Fixed fixed) {
      return Optional.of(new Value.Measured(fixed.quantity()));
    }
    Amount.Measured named = (Amount.Measured) amount;
    boolean number =
        sum.inputs().stream()
            .anyMatch(input -> input.id().equals(id) && input instanceof Input.Number);
    return number
        ? boat.map(known -> known.model().details().measures().get(named.measure()))
            .map(fixed -> new Value.Measured(times(fixed.quantity(), named.times())))
        : Optional.of(Value.of(named.measure()));
  }

  private static Quantity<?> times(Quantity<?> quantity, double times) {
    return times == 1 ? quantity : quantity.multiply(times);
  }

  private static String missing(Sum sum, String id, String measure, Optional<Boat> boat) {
    String title =
        sum.inputs().stream()
            .filter(input -> input.id().equals(id))
            .map(Input::title)
            .findFirst()
            .orElse(id);
    String spoken = Sentences.spoken(measure);
    return boat.map(
            known ->
                title
                    + ": the page of the "
                    + known.model().title()
                    + " gives no "
                    + spoken
                    + "; the usual value stands in its place, measure it on the boat.")
        .orElse(title + " depends on the boat: its " + spoken + "; the usual value stands here.");
  }
}
