package limberboard.workings.sums;

import javax.measure.Quantity;
import limberboard.workings.QuantityWords;

/** One result of a sum. */
public sealed interface Result {

  /** What scripts call it: lower case with hyphens. */
  String id();

  /** What people call it. */
  String title();

  /** The result in words, quantities to three figures. */
  String text(QuantityWords words);

  /**
   * A quantity.
   *
   * @param id its id
   * @param title its title
   * @param quantity the quantity, not rounded
   */
  record Reckoned(String id, String title, Quantity<?> quantity) implements Result {
    @Override
    public String text(QuantityWords words) {
      return words.rounded(quantity);
    }
  }

  /**
   * Something else, such as the name of a grade.
   *
   * @param id its id
   * @param title its title
   * @param said what is said
   */
  record Said(String id, String title, String said) implements Result {
    @Override
    public String text(QuantityWords words) {
      return said;
    }
  }

  /**
   * No finite number. A reckoning with such a result is refused.
   *
   * @param id its id
   * @param title its title
   */
  record Beyond(String id, String title) implements Result {
    @Override
    public String text(QuantityWords words) {
      return "beyond what can be computed";
    }
  }
}
