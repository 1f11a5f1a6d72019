package limberboard.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
record Product(String name, List<Factor> factors, KnownUnit unit, double scale) {
  private static final double CUBIC_MILLIMETRES_IN_ML = 1000;
  private static final double ML_IN_A_MILLIMETRE_OVER_A_SQUARE_METRE = 1000;

  /**
   * One factor.
   *
   * @param name its key in the page
   * @param term what it is on the boat
   * @param unit what it is reckoned in
   */
  record Factor(String name, Term term, KnownUnit unit) {
    boolean agrees() {
      return !(term instanceof Term.Known known) || unit.measures(known.quantity());
    }

    private double value() {
      return term instanceof Term.Known known ? known.in(unit).orElse(Double.NaN) : Double.NaN;
    }
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
  Optional<String> missing() {
    for (Factor factor : factors) {
      if (factor.term() instanceof Term.Missing missing) {
        return Optional.of(missing.measure());
      }
    }
    return Optional.empty();
  }

  /** The first factor whose dimension is not what it has to be. */
  Optional<Factor> mistake() {
    return factors.stream().filter(factor -> !factor.agrees()).findFirst();
  }

  /** The product in its unit; asked only when nothing is missing or mistaken. */
  double value() {
    return factors.stream().mapToDouble(Factor::value).reduce(scale, (a, b) -> a * b);
  }

  /** Whether there is something to show besides the amount itself. */
  boolean isWorthShowing() {
    return factors.size() > 1
        || factors.get(0).term() instanceof Term.Known known && !known.isPlain();
  }

  /** Whether it is one measure of the boat as it stands, with nothing to multiply. */
  boolean isOneMeasure() {
    return factors.size() == 1
        && factors.get(0).term() instanceof Term.Known known
        && known.times() == 1;
  }

  /** The first factor's measure in words, or nothing. */
  String measure() {
    return factors.get(0).term() instanceof Term.Known known ? known.measure() : "";
  }

  /** The factors as they are multiplied: {@code 400 × 6 × 3 mm}. */
  String text() {
    List<Term.Known> known = new ArrayList<>();
    for (Factor factor : factors) {
      if (factor.term() instanceof Term.Known term) {
        known.add(term);
      }
    }
    Optional<String> shared = sharedSymbol(known);
    List<String> parts = new ArrayList<>();
    for (Term.Known term : known) {
      String text = term.text();
      boolean last = parts.size() == known.size() - 1;
      parts.add(
          shared.isPresent() && !last
              ? text.substring(0, text.length() - shared.get().length() - 1)
              : text);
    }
    return String.join(" × ", parts);
  }

  private static Optional<String> sharedSymbol(List<Term.Known> terms) {
    List<KnownUnit> units =
        terms.stream()
            .filter(Term.Known::isPlain)
            .flatMap(term -> KnownUnit.ownOf(term.quantity()).stream())
            .distinct()
            .toList();
    boolean shared =
        terms.stream().allMatch(Term.Known::isPlain)
            && units.size() == 1
            && !units.get(0).symbol().isEmpty();
    return shared ? Optional.of(units.get(0).symbol()) : Optional.empty();
  }
}
