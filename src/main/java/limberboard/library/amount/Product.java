package limberboard.library.amount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.MaterialUse.Bead;
import limberboard.library.page.MaterialUse.Coat;
import limberboard.library.page.MaterialUse.Cord;
import limberboard.library.page.Model;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;

/**
 * What an amount is worked out from: factors multiplied with each other.
 *
 * @param name what the page calls it: bead, coat, cord, amount, pieces
 * @param factors at least one
 * @param unit what the product is in
 * @param scale from the product of the factors' units to the unit
 */
public record Product(String name, List<Factor> factors, KnownUnit unit, double scale) {
  private static final double CUBIC_MILLIMETRES_IN_ML = 1000;
  private static final double ML_IN_A_MILLIMETRE_OVER_A_SQUARE_METRE = 1000;

  /**
   * One factor.
   *
   * @param name its key in the page
   * @param term what it is on the boat
   * @param unit what it is reckoned in
   */
  public record Factor(String name, Term term, KnownUnit unit) {
    /** Whether its dimension is what it has to be. */
    public boolean agrees() {
      return !(term instanceof Term.Known known) || unit.measures(known.quantity());
    }

    private double value() {
      return term instanceof Term.Known known ? known.in(unit).orElse(Double.NaN) : Double.NaN;
    }
  }

  /** Copies the list. */
  public Product {
    factors = List.copyOf(factors);
  }

  /**
   * What a use asks for.
   *
   * @param use how much of which material
   * @param counted what the material is counted in
   * @param model whose measures are used; without one no measure is known
   * @return empty where the use names no amount
   */
  public static Optional<Product> of(MaterialUse use, KnownUnit counted, Optional<Model> model) {
    return use.bead()
        .map(bead -> of(bead, model))
        .or(() -> use.coat().map(coat -> of(coat, model)))
        .or(() -> use.cord().map(cord -> of(cord, model)))
        .or(() -> use.pieces().map(n -> of("pieces", n, model, KnownUnit.PIECES)))
        .or(() -> use.amount().map(amount -> of("amount", amount, model, counted)));
  }

  /** Whether every factor is known and of the right dimension. */
  public boolean isKnown() {
    return missing().isEmpty() && mistake().isEmpty();
  }

  /** Length × width × depth. */
  static Product of(Bead bead, Optional<Model> model) {
    List<Factor> sides =
        List.of(
            factor("length", bead.length(), model, KnownUnit.MILLIMETRE),
            factor("width", bead.width(), model, KnownUnit.MILLIMETRE),
            factor("depth", bead.depth(), model, KnownUnit.MILLIMETRE));
    return new Product("bead", sides, KnownUnit.MILLILITRE, 1 / CUBIC_MILLIMETRES_IN_ML);
  }

  /** Area × thickness. */
  static Product of(Coat coat, Optional<Model> model) {
    List<Factor> sides =
        List.of(
            factor("area", coat.area(), model, KnownUnit.SQUARE_METRES),
            factor("thickness", coat.thickness(), model, KnownUnit.MILLIMETRE));
    return new Product("coat", sides, KnownUnit.MILLILITRE, ML_IN_A_MILLIMETRE_OVER_A_SQUARE_METRE);
  }

  /** Length × count. */
  static Product of(Cord cord, Optional<Model> model) {
    List<Factor> factors = new ArrayList<>();
    cord.count().ifPresent(count -> factors.add(factor("count", count, model, KnownUnit.PIECES)));
    factors.add(factor("length", cord.length(), model, KnownUnit.METRES));
    return new Product("cord", List.copyOf(factors), KnownUnit.METRES, 1);
  }

  /** An amount that stands as it is, in the unit given. */
  static Product of(String name, Amount amount, Optional<Model> model, KnownUnit unit) {
    return new Product(name, List.of(factor(name, amount, model, unit)), unit, 1);
  }

  private static Factor factor(String name, Amount amount, Optional<Model> model, KnownUnit unit) {
    return new Factor(name, Term.of(amount, model), unit);
  }

  /** The first measure that the boat's model does not know. */
  public Optional<String> missing() {
    for (Factor factor : factors) {
      if (factor.term() instanceof Term.Missing missing) {
        return Optional.of(missing.measure());
      }
    }
    return Optional.empty();
  }

  /** The first factor whose dimension is not what it has to be. */
  public Optional<Factor> mistake() {
    return factors.stream().filter(factor -> !factor.agrees()).findFirst();
  }

  /** The product in its unit; asked only when nothing is missing or mistaken. */
  public double value() {
    return factors.stream().mapToDouble(Factor::value).reduce(scale, (a, b) -> a * b);
  }
}
