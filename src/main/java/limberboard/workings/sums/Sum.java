package limberboard.workings.sums;

import java.util.List;
import java.util.Map;
import limberboard.boat.Boat;

/** One calculation. Implementations are immutable and pure. */
public interface Sum {

  /** What people read of it. */
  SumText text();

  /** What goes in, in the order of a form; ids are unique within the sum. */
  List<Input> inputs();

  /**
   * Computes. Called by {@link #reckon} with checked inputs only: each number within its allowed
   * span and in its input's unit, each word one of its choice's.
   */
  Answer work(CheckedInputs given);

  /** The id that files and commands call it by: lower case with hyphens. */
  default String id() {
    return text().id();
  }

  /**
   * What is known of a boat and stands in place of the usual values. Unless a sum knows more, this
   * is the water the boat lies in, for an input called {@code water} with the words of {@link
   * limberboard.library.value.Water}.
   */
  default Map<String, Value> defaultsFor(Boat boat) {
    return BoatDefaults.water(this, boat);
  }

  /**
   * Reckons.
   *
   * @param values input id to what is put in; what is left out has its usual value
   * @return results, or what is wrong with the inputs; never an exception
   */
  default Reckoning reckon(Map<String, Value> values) {
    return new Reckoner(this).reckon(values);
  }
}
