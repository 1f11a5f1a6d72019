package limberboard.workings;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import limberboard.library.value.FigureValue;
import limberboard.library.value.KnownUnit;

/**
 * Writes quantities for people: metric, with imperial or United States customary units beside them
 * on request. Immutable.
 *
 * <p>Factors: 1 in = 25.4 mm and 1 lb = 0.453 592 37 kg exactly (international yard and pound
 * agreement, 1959); 1 imperial gallon = 4.546 09 l exactly (Weights and Measures Act 1985); 1 US
 * gallon = 231 cubic inches; 1 lbf = 1 lb under standard gravity, 9.806 65 m/s².
 *
 * @param beside which units are written beside the metric ones
 */
public record QuantityWords(UnitsBeside beside) {
  /** Metric alone. */
  public static final QuantityWords METRIC = new QuantityWords(UnitsBeside.NOTHING);

  private static final int COMPUTED_FIGURES = 3;
  private static final int WRITTEN_FIGURES = 10;
  private static final int TRUSTED_FIGURES = 13;
  private static final double A_THOUSAND = 1000;

  /** A quantity in its own unit, as its author wrote it. */
  public String written(Quantity<?> quantity) {
    Optional<KnownUnit> own = KnownUnit.ownOf(quantity);
    if (own.isEmpty()) {
      return quantity.toString();
    }
    double value = quantity.getValue().doubleValue();
    return join(number(value, WRITTEN_FIGURES), own.get().symbol()) + aside(quantity);
  }

  /** What stands beside a figure that a page says, with a blank before it; nothing in metric. */
  public String beside(FigureValue figure) {
    String least = aside(figure.least());
    boolean one = least.isEmpty() || figure.least().equals(figure.most());
    return one ? least : least.replace(")", " to ") + aside(figure.most()).replace(" (", "");
  }

  /** A computed quantity in the handiest unit, to three figures. */
  public String computed(Quantity<?> quantity) {
    for (KnownUnit unit :
        new KnownUnit[] {
          KnownUnit.LITRES, KnownUnit.KILOGRAM, KnownUnit.SQUARE_METRES, KnownUnit.METRES
        }) {
      OptionalDouble value = unit.of(quantity);
      if (value.isPresent()) {
        return handiest(unit, value.getAsDouble()) + aside(quantity);
      }
    }
    OptionalDouble pieces = KnownUnit.PIECES.of(quantity);
    return pieces.isPresent() ? number(pieces.getAsDouble(), WRITTEN_FIGURES) : written(quantity);
  }

  /** A quantity in its own unit, to three figures; less than a kilogram in grams. */
  public String rounded(Quantity<?> quantity) {
    Optional<KnownUnit> own = KnownUnit.ownOf(quantity);
    if (own.isEmpty()) {
      return written(quantity);
    }
    double value = quantity.getValue().doubleValue();
    boolean light = own.get() == KnownUnit.KILOGRAM && value < 1;
    String text = light ? handiest(own.get(), value) : join(figures(value), own.get().symbol());
    return text + aside(quantity);
  }

  /** A plain number as a person writes it, without an exponent or trailing zeros. */
  public static String plain(double value) {
    return number(value, WRITTEN_FIGURES);
  }

  private static String handiest(KnownUnit unit, double value) {
    boolean small = value < 1;
    return switch (unit) {
      case LITRES -> small ? figures(value * A_THOUSAND) + " ml" : figures(value) + " l";
      case KILOGRAM -> small ? figures(value * A_THOUSAND) + " g" : figures(value) + " kg";
      default -> figures(value) + " " + unit.symbol();
    };
  }

  private static String figures(double value) {
    return number(value, COMPUTED_FIGURES);
  }

  private static String join(String number, String symbol) {
    if (number.equals("1") && symbol.equals(KnownUnit.YEARS.symbol())) {
      return "1 year";
    }
    return symbol.isEmpty() ? number : number + " " + symbol;
  }

  private String aside(Quantity<?> quantity) {
    return beside == UnitsBeside.NOTHING
        ? ""
        : OtherUnits.of(quantity, beside).map(text -> " (" + text + ")").orElse("");
  }

  /**
   * A number with so many figures, without trailing zeros and without an exponent; whole numbers
   * keep all their digits.
   */
  static String number(double value, int figures) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal exact = BigDecimal.valueOf(value).round(new MathContext(TRUSTED_FIGURES));
    BigDecimal rounded = exact.round(new MathContext(figures, RoundingMode.HALF_UP));
    if (rounded.scale() < 0) {
      rounded = exact.setScale(0, RoundingMode.HALF_UP);
    }
    BigDecimal plain = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return plain.toPlainString();
  }
}
