package limberboard.library.value;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.YEAR;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.quantity.Quantities;

/** The units that amounts are written in, with the symbols a reader expects. */
public enum KnownUnit {
  /** Millimetres. */
  MILLIMETRE(MILLI(METRE), "mm"),
  /** Centimetres. */
  CENTIMETRE(CENTI(METRE), "cm"),
  /** Metres. */
  METRES(METRE, "m"),
  /** Square millimetres. */
  SQUARE_MILLIMETRE(MILLI(METRE).multiply(MILLI(METRE)), "mm²"),
  /** Square centimetres. */
  SQUARE_CENTIMETRE(CENTI(METRE).multiply(CENTI(METRE)), "cm²"),
  /** Square metres. */
  SQUARE_METRES(SQUARE_METRE, "m²"),
  /** Millilitres. */
  MILLILITRE(MILLI(LITRE), "ml"),
  /** Litres. */
  LITRES(LITRE, "l"),
  /** Grams. */
  GRAMS(GRAM, "g"),
  /** Kilograms. */
  KILOGRAM(KILO(GRAM), "kg"),
  /** Newtons. */
  NEWTONS(NEWTON, "N"),
  /** Kilonewtons. */
  KILONEWTON(KILO(NEWTON), "kN"),
  /** Minutes. */
  MINUTES(MINUTE, "min"),
  /** Hours. */
  HOURS(HOUR, "h"),
  /** Years of 365.2425 days. */
  YEARS(YEAR, "years"),
  /** Degrees Celsius; the only unit whose values may be below nought in files. */
  DEGREES_CELSIUS(CELSIUS, "°C"),
  /** Bars. */
  BARS(KILO(PASCAL).multiply(100), "bar"),
  /** Newtons on a square millimetre, that is megapascals. */
  NEWTONS_ON_SQUARE_MILLIMETRE(MEGA(PASCAL), "N/mm²"),
  /** Newton metres, of a torque. */
  NEWTON_METRES(NEWTON.multiply(METRE), "Nm"),
  /** Square millimetres a second: kinematic viscosity, in another word centistokes. */
  SQUARE_MILLIMETRES_A_SECOND(MILLI(METRE).multiply(MILLI(METRE)).divide(SECOND), "mm²/s"),
  /** Litres a minute. */
  LITRES_A_MINUTE(LITRE.divide(MINUTE), "l/min"),
  /** Litres an hour. */
  LITRES_AN_HOUR(LITRE.divide(HOUR), "l/h"),
  /** Amperes. */
  AMPERES(AMPERE, "A"),
  /** Milliamperes on a square metre. */
  MILLIAMPERES_ON_SQUARE_METRE(MILLI(AMPERE).divide(SQUARE_METRE), "mA/m²"),
  /** Ampere hours. */
  AMPERE_HOURS(AMPERE.multiply(HOUR), "Ah"),
  /** Volts. */
  VOLTS(VOLT, "V"),
  /** Hundredths. */
  HUNDREDTHS(PERCENT, "%"),
  /** Pieces; without a symbol. */
  PIECES(METRE.divide(METRE), "");

  private static final double SAME = 1e-9;

  private final Unit<?> unit;
  private final String symbol;

  KnownUnit(Unit<?> unit, String symbol) {
    this.unit = unit;
    this.symbol = symbol;
  }

  /** The unit of measure. */
  public Unit<?> unit() {
    return unit;
  }

  /** The symbol a reader expects; empty for pieces. */
  public String symbol() {
    return symbol;
  }

  /** The value of a quantity in this unit; empty when it is of another dimension. */
  public OptionalDouble of(Quantity<?> quantity) {
    return converted(quantity.getUnit(), quantity.getValue().doubleValue());
  }

  /** Whether the quantity has this unit's dimension. */
  public boolean measures(Quantity<?> quantity) {
    return quantity.getUnit().isCompatible(unit);
  }

  /** A quantity in this unit. */
  public Quantity<?> quantity(double value) {
    return Quantities.getQuantity(value, unit);
  }

  private OptionalDouble converted(Unit<?> from, double value) {
    if (!from.isCompatible(unit)) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(from.getConverterToAny(unit).convert(value));
    } catch (IncommensurableException e) {
      return OptionalDouble.empty();
    }
  }

  /** The known unit that is the quantity's own, whichever way it was put together. */
  public static Optional<KnownUnit> ownOf(Quantity<?> quantity) {
    for (KnownUnit known : values()) {
      OptionalDouble one = known.converted(quantity.getUnit(), 1);
      if (one.isPresent() && Math.abs(one.getAsDouble() - 1) <= SAME) {
        return Optional.of(known);
      }
    }
    return Optional.empty();
  }

  /** The unit that a material's amounts are counted in. */
  public static KnownUnit counting(CountingUnit unit) {
    return switch (unit) {
      case ML -> MILLILITRE;
      case G -> GRAMS;
      case M -> METRES;
      case PIECE -> PIECES;
    };
  }
}
