package limberboard.workings;

import java.util.Optional;
import limberboard.library.amount.Product;
import limberboard.library.amount.Product.Factor;
import limberboard.library.amount.Term;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;

/** Says what does not agree in an amount, and what would. */
final class Mistakes {
  private Mistakes() {}

  /** A factor of the wrong dimension: a width in grams. */
  static AmountOutcome ofFactor(Product product, Factor factor) {
    String written =
        factor.term() instanceof Term.Known known ? ProductText.of(known) : factor.name();
    String what =
        product.factors().size() == 1
            ? "the " + product.name()
            : "the " + factor.name() + " of the " + product.name();
    return new AmountOutcome.Mistaken(
        what + " is written " + written, "write " + right(factor.unit()));
  }

  /** A product that is not what the material is counted in: a bead of something sold by weight. */
  static Optional<AmountOutcome> ofUnit(Product product, String material, CountingUnit counted) {
    KnownUnit unit = KnownUnit.counting(counted);
    if (unit.unit().isCompatible(product.unit().unit())) {
      return Optional.empty();
    }
    return Optional.of(
        new AmountOutcome.Mistaken(
            asked(product) + ", and " + material + " is counted in " + plural(unit),
            "write its amount as " + right(unit)));
  }

  private static String asked(Product product) {
    return product.name().equals("pieces")
        ? "pieces are asked for"
        : "the " + product.name() + " comes to " + plural(product.unit());
  }

  private static String plural(KnownUnit unit) {
    return unit == KnownUnit.PIECES ? "pieces" : unit.symbol();
  }

  private static String right(KnownUnit unit) {
    return switch (unit) {
      case MILLIMETRE -> "a length, such as 6 mm";
      case METRES -> "a length, such as 1.2 m";
      case SQUARE_METRES -> "an area, such as 0.5 m2";
      case MILLILITRE -> "a volume, such as 50 ml";
      case GRAMS -> "a weight, such as 20 g";
      default -> "a plain number, such as 2";
    };
  }
}
