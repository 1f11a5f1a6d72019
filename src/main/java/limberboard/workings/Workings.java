package limberboard.workings;

import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.library.amount.Product;
import limberboard.library.page.Material;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.value.CountingUnit;
import limberboard.library.value.KnownUnit;
import limberboard.words.Sentences;

/** Works out what a job needs of a material, for one boat or for none. Immutable. */
public final class Workings {
  private static final double HAIR = 1e-9;

  private final Optional<Boat> boat;
  private final QuantityWords text;
  private final HoldsText holdsText;

  /**
   * Workings for a boat, or without one.
   *
   * @param boat whose measures are used; without a boat, measured amounts stay open
   * @param text how quantities are written
   */
  public Workings(Optional<Boat> boat, QuantityWords text) {
    this.boat = boat;
    this.text = text;
    this.holdsText = new HoldsText(text);
  }

  /** How much of the material is needed, with the working and the packs to buy. */
  public Needed needed(MaterialUse use, Page<Material> page) {
    Optional<Product> product = product(use, page.details());
    if (product.isEmpty()) {
      return open(use, page, new AmountOutcome.NotStated());
    }
    Optional<AmountOutcome> obstacle = obstacle(product.get(), page);
    return obstacle.isPresent()
        ? open(use, page, obstacle.get())
        : reckoned(use, page, product.get());
  }

  private static Needed open(MaterialUse use, Page<Material> page, AmountOutcome outcome) {
    return new Needed(page, use.purpose(), outcome, "", Optional.empty());
  }

  private Optional<Product> product(MaterialUse use, Material material) {
    Optional<Model> model = boat.map(known -> known.model().details());
    KnownUnit counted = material.unit().map(KnownUnit::counting).orElse(KnownUnit.PIECES);
    return Product.of(use, counted, model);
  }

  private Optional<AmountOutcome> obstacle(Product product, Page<Material> page) {
    Optional<AmountOutcome> mistake =
        product.mistake().map(factor -> Mistakes.ofFactor(product, factor));
    Optional<CountingUnit> counted = page.details().unit();
    if (mistake.isEmpty() && counted.isPresent()) {
      mistake = Mistakes.ofUnit(product, page.title(), counted.get());
    }
    return mistake.or(() -> product.missing().map(this::toMeasure));
  }

  private AmountOutcome toMeasure(String measure) {
    String spoken = Sentences.spoken(measure);
    return new AmountOutcome.ToMeasure(
        measure,
        boat.map(
                known ->
                    "to be measured on the boat: the page of the "
                        + known.model().title()
                        + " does not give its "
                        + spoken)
            .orElse("depends on the boat: its " + spoken));
  }

  private Needed reckoned(MaterialUse use, Page<Material> page, Product product) {
    boolean pieces = product.unit() == KnownUnit.PIECES;
    double exact = product.value();
    double value = pieces ? Math.ceil(exact - HAIR) : exact;
    Optional<CountingUnit> unit = page.details().unit();
    Optional<Purchase> purchase =
        unit.flatMap(counted -> new PackChooser(page.details().packs(), counted).choose(value));
    String working = new ProductText(product).isWorthShowing() ? sum(product, exact, value) : "";
    String holds =
        working.isEmpty()
            ? ""
            : purchase.map(bought -> holdsText.of(bought, value, unit.get())).orElse("");
    return new Needed(
        page,
        use.purpose(),
        new AmountOutcome.Reckoned(product.unit().quantity(value)),
        holds.isEmpty() ? working : working + "; " + holds,
        purchase);
  }

  private String sum(Product product, double exact, double value) {
    ProductText written = new ProductText(product);
    if (written.isOneMeasure()) {
      return "the boat's " + written.measure();
    }
    String sum = written.text() + " = " + text.computed(product.unit().quantity(exact));
    return exact < value - HAIR
        ? sum + ", so " + text.computed(product.unit().quantity(value))
        : sum;
  }
}
