package limberboard.library.value;

import javax.measure.Quantity;

/** How much, how long, how many: a quantity, or the name of a measure of the boat's model. */
public sealed interface Amount {

  /**
   * An amount that is the same for every boat.
   *
   * @param quantity the quantity; counts are dimensionless
   */
  record Fixed(Quantity<?> quantity) implements Amount {}

  /**
   * An amount that the boat's model knows.
   *
   * @param measure the name under the model's {@code measures}
   * @param times factor, greater than 0
   */
  record Measured(String measure, double times) implements Amount {}

  /**
   * Reads a quantity, or anything that does not begin like one as a measure's name.
   *
   * @throws IllegalArgumentException when it begins like a quantity and is none, with a message
   *     that says what is
   */
  static Amount of(String text) {
    return QuantityText.looksLikeQuantity(text)
        ? new Fixed(QuantityText.parse(text))
        : new Measured(text, 1);
  }
}
