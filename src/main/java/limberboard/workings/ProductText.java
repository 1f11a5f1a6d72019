package limberboard.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.amount.Product;
import limberboard.library.amount.Term;
import limberboard.library.value.KnownUnit;
import limberboard.words.Sentences;

/**
 * What is shown of a product.
 *
 * @param product what an amount is worked out from
 */
record ProductText(Product product) {
  private static final int FACTOR_FIGURES = 6;

  /** How a factor stands in the working: {@code 1.1 × 2.05 m (forehatch gasket)}. */
  static String of(Term.Known term) {
    String factor =
        term.times() == 1 ? "" : QuantityWords.number(term.times(), FACTOR_FIGURES) + " × ";
    String measure = Sentences.spoken(term.measure());
    String source = measure.isEmpty() ? "" : " (" + measure + ")";
    return factor + QuantityWords.METRIC.written(term.quantity()) + source;
  }

  /** Whether there is something to show besides the amount itself. */
  boolean isWorthShowing() {
    return product.factors().size() > 1 || first().filter(known -> !known.isPlain()).isPresent();
  }

  /** Whether it is one measure of the boat as it stands, with nothing to multiply. */
  boolean isOneMeasure() {
    return product.factors().size() == 1 && first().filter(known -> known.times() == 1).isPresent();
  }

  /** The first factor's measure in words, or nothing. */
  String measure() {
    return first().map(known -> Sentences.spoken(known.measure())).orElse("");
  }

  private Optional<Term.Known> first() {
    return product.factors().get(0).term() instanceof Term.Known known
        ? Optional.of(known)
        : Optional.empty();
  }

  /** The factors as they are multiplied: {@code 400 × 6 × 3 mm}. */
  String text() {
    List<Term.Known> known = new ArrayList<>();
    for (Product.Factor factor : product.factors()) {
      if (factor.term() instanceof Term.Known term) {
        known.add(term);
      }
    }
    Optional<String> shared = sharedSymbol(known);
    List<String> parts = new ArrayList<>();
    for (Term.Known term : known) {
      String text = of(term);
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
