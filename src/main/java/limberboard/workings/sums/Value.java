package limberboard.workings.sums;

import javax.measure.Quantity;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;

/** What is put in at an input. */
public sealed interface Value {

  /**
   * A quantity in whatever unit.
   *
   * @param quantity the quantity
   */
  record Measured(Quantity<?> quantity) implements Value {}

  /**
   * A word of a choice.
   *
   * @param word the word
   */
  record Chosen(String word) implements Value {}

  /** A quantity of so many units. */
  static Value of(double value, KnownUnit unit) {
    return new Measured(unit.quantity(value));
  }

  /** A word of a choice. */
  static Value of(String word) {
    return new Chosen(word);
  }

  /**
   * Reads what a person typed: a quantity such as {@code 400 mm}, or a word.
   *
   * @throws IllegalArgumentException when it begins like a quantity and is none, with a message
   *     that says what is
   */
  static Value read(String text) {
    return Amount.of(text.strip()) instanceof Amount.Fixed fixed
        ? new Measured(fixed.quantity())
        : new Chosen(text.strip());
  }
}
