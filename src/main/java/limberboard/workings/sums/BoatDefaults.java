package limberboard.workings.sums;

import java.util.Map;
import limberboard.boat.Boat;

/** What sums take from a boat. */
final class BoatDefaults {
  private static final String WATER = "water";

  private BoatDefaults() {}

  /** The water the boat lies in, where a sum has an input for it. */
  static Map<String, Value> water(Sum sum, Boat boat) {
    String word = boat.water().word();
    boolean asks =
        sum.inputs().stream()
            .anyMatch(
                input ->
                    input instanceof Input.Choice choice
                        && choice.id().equals(WATER)
                        && choice.option(word).isPresent());
    return asks ? Map.of(WATER, Value.of(word)) : Map.of();
  }
}
