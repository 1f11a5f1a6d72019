package limberboard.workings;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import limberboard.library.value.KnownUnit;

/**
 * Imperial and United States customary units; the factors' sources are named in {@link
 * QuantityWords}.
 */
final class OtherUnits {
  private static final double INCH_MM = 25.4;
  private static final double FOOT_M = 12 * INCH_MM / 1000;
  private static final double POUND_KG = 0.45359237;
  private static final double STANDARD_GRAVITY = 9.80665;
  private static final double IMPERIAL_GALLON_L = 4.54609;
  private static final double US_GALLON_L = 231 * INCH_MM * INCH_MM * INCH_MM / 1e6;
  private static final int OUNCES_IN_POUND = 16;
  private static final int IMPERIAL_FLUID_OUNCES_IN_GALLON = 160;
  private static final int US_FLUID_OUNCES_IN_GALLON = 128;
  private static final int FIGURES = 3;

  /**
   * A unit, in terms of a metric one, and the least value from which on it is used.
   *
   * @param metric the metric unit
   * @param size how many metric units it is
   * @param symbol its symbol
   * @param from used from this many metric units on
   */
  private record Other(KnownUnit metric, double size, String symbol, double from) {}

  private static final List<Other> COMMON =
      List.of(
          new Other(KnownUnit.METRES, FOOT_M, "ft", 1),
          new Other(KnownUnit.METRES, INCH_MM / 1000, "in", 0),
          new Other(KnownUnit.SQUARE_METRES, FOOT_M * FOOT_M, "sq ft", 0.1),
          new Other(KnownUnit.SQUARE_METRES, INCH_MM * INCH_MM / 1e6, "sq in", 0),
          new Other(KnownUnit.KILOGRAM, POUND_KG, "lb", POUND_KG),
          new Other(KnownUnit.KILOGRAM, POUND_KG / OUNCES_IN_POUND, "oz", 0),
          new Other(KnownUnit.NEWTONS, POUND_KG * STANDARD_GRAVITY, "lbf", 0),
          new Other(KnownUnit.NEWTON_METRES, POUND_KG * STANDARD_GRAVITY * FOOT_M, "lbf ft", 0));

  private static final List<Other> IMPERIAL_VOLUMES =
      List.of(
          new Other(KnownUnit.LITRES, IMPERIAL_GALLON_L, "imperial gal", IMPERIAL_GALLON_L),
          new Other(
              KnownUnit.LITRES,
              IMPERIAL_GALLON_L / IMPERIAL_FLUID_OUNCES_IN_GALLON,
              "imperial fl oz",
              0));

  private static final List<Other> US_VOLUMES =
      List.of(
          new Other(KnownUnit.LITRES, US_GALLON_L, "US gal", US_GALLON_L),
          new Other(KnownUnit.LITRES, US_GALLON_L / US_FLUID_OUNCES_IN_GALLON, "US fl oz", 0));

  private OtherUnits() {}

  /** The quantity in the other units, to three figures; empty where there is none in use. */
  static Optional<String> of(Quantity<?> quantity, UnitsBeside beside) {
    List<Other> volumes = beside == UnitsBeside.US_CUSTOMARY ? US_VOLUMES : IMPERIAL_VOLUMES;
    return in(COMMON, quantity).or(() -> in(volumes, quantity));
  }

  private static Optional<String> in(List<Other> units, Quantity<?> quantity) {
    for (Other other : units) {
      OptionalDouble value = other.metric().of(quantity);
      if (value.isPresent() && value.getAsDouble() >= other.from()) {
        double converted = value.getAsDouble() / other.size();
        return Optional.of(QuantityWords.number(converted, FIGURES) + " " + other.symbol());
      }
    }
    return Optional.empty();
  }
}
