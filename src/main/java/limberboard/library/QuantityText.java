package limberboard.library;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Reads quantities as pages write them: {@code 400 mm}, {@code 1.2 l}, {@code 4}. */
public final class QuantityText {
  private static final Pattern QUANTITY = Pattern.compile("(\\d+(?:\\.\\d+)?)(?: ([A-Za-z0-9]+))?");
  private static final Map<String, Unit<?>> UNITS = new LinkedHashMap<>();

  static {
    Unit<?> millimetre = MetricPrefix.MILLI(Units.METRE);
    Unit<?> centimetre = MetricPrefix.CENTI(Units.METRE);
    UNITS.put("mm", millimetre);
    UNITS.put("cm", centimetre);
    UNITS.put("m", Units.METRE);
    UNITS.put("mm2", millimetre.multiply(millimetre));
    UNITS.put("cm2", centimetre.multiply(centimetre));
    UNITS.put("m2", Units.SQUARE_METRE);
    UNITS.put("ml", MetricPrefix.MILLI(Units.LITRE));
    UNITS.put("l", Units.LITRE);
    UNITS.put("g", Units.GRAM);
    UNITS.put("kg", Units.KILOGRAM);
    UNITS.put("N", Units.NEWTON);
    UNITS.put("kN", MetricPrefix.KILO(Units.NEWTON));
    UNITS.put("min", Units.MINUTE);
    UNITS.put("h", Units.HOUR);
  }

  private QuantityText() {}

  /**
   * Reads a quantity; a number without a unit is dimensionless (a count).
   *
   * @throws IllegalArgumentException when it is none, with a message that says what is
   */
  public static Quantity<?> parse(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no quantity; write a number, a space and a unit, such as 400 mm");
    }
    double number = Double.parseDouble(matcher.group(1));
    String unit = matcher.group(2);
    if (unit == null) {
      return Quantities.getQuantity(number, AbstractUnit.ONE);
    }
    Unit<?> known = UNITS.get(unit);
    if (known == null) {
      throw new IllegalArgumentException(
          "the unit \"" + unit + "\" is not known; use one of " + String.join(" ", UNITS.keySet()));
    }
    return Quantities.getQuantity(number, known);
  }

  /** Whether the text begins like a quantity and so is not a measure's name. */
  static boolean looksLikeQuantity(String text) {
    return !text.isEmpty()
        && (Character.isDigit(text.charAt(0)) || "-+.".indexOf(text.charAt(0)) >= 0);
  }
}
