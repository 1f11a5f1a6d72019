package limberboard.library.amount;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import limberboard.library.page.Model;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;

/** One factor of a working: what an amount is on a boat. */
public sealed interface Term {

  /**
   * It is known.
   *
   * @param quantity the quantity, before {@code times}
   * @param times what it is multiplied by
   * @param measure the measure it came from, as it stands in files; empty for a fixed one
   */
  record Known(Quantity<?> quantity, double times, String measure) implements Term {
    /** The value in a unit, times included; empty when the dimensions do not agree. */
    public OptionalDouble in(KnownUnit unit) {
      OptionalDouble value = unit.of(quantity);
      return value.isPresent()
          ? OptionalDouble.of(value.getAsDouble() * times)
          : OptionalDouble.empty();
    }

    /** Whether it stands as its author wrote it. */
    public boolean isPlain() {
      return times == 1 && measure.isEmpty();
    }
  }

  /**
   * The model does not know the measure, or there is no boat.
   *
   * @param measure the measure's name as it stands in files
   */
  record Missing(String measure) implements Term {}

  /** What an amount is, given the measures of a model; without a model no measure is known. */
  static Term of(Amount amount, Optional<Model> model) {
    if (amount instanceof Amount.Measured measured) {
      String name = measured.measure();
      return model
          .map(known -> known.measures().get(name))
          .<Term>map(fixed -> new Known(fixed.quantity(), measured.times(), name))
          .orElseGet(() -> new Missing(name));
    }
    return new Known(((Amount.Fixed) amount).quantity(), 1, "");
  }
}
