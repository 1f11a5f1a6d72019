package limberboard.library.value;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;

/** Reads quantities as pages write them: {@code 400 mm}, {@code 1.2 l}, {@code 4}. */
public final class QuantityText {
  private static final Pattern QUANTITY =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)(?: ([A-Za-z0-9°%/²]+))?");
  private static final int LONGEST = 40;
  private static final Set<String> OF_TEMPERATURE = Set.of("°C", "degC");
  private static final Map<String, KnownUnit> UNITS = new LinkedHashMap<>();

  static {
    for (KnownUnit unit : KnownUnit.values()) {
      if (unit != KnownUnit.PIECES) {
        UNITS.put(written(unit), unit);
      }
    }
  }

  private QuantityText() {}

  /** A unit as it is typed: {@code mm2} for mm². */
  private static String written(KnownUnit unit) {
    return unit.symbol().replace('²', '2');
  }

  /**
   * Reads a quantity; a number without a unit is dimensionless (a count).
   *
   * @throws IllegalArgumentException when it is none, with a message that says what is
   */
  public static Quantity<?> parse(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (text.length() > LONGEST || !matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no quantity; write a number, a space and a unit, such as 400 mm");
    }
    double number = Double.parseDouble(matcher.group(1));
    String unit = matcher.group(2);
    if (number < 0 && !OF_TEMPERATURE.contains(unit == null ? "" : unit)) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is below nought; only a temperature, such as -5 °C, may be");
    }
    if (unit == null) {
      return Quantities.getQuantity(number, AbstractUnit.ONE);
    }
    KnownUnit known =
        OF_TEMPERATURE.contains(unit)
            ? KnownUnit.DEGREES_CELSIUS
            : UNITS.get(unit.replace('²', '2'));
    if (known == null) {
      throw new IllegalArgumentException(
          "the unit \"" + unit + "\" is not known; use one of " + String.join(" ", UNITS.keySet()));
    }
    return known.quantity(number);
  }

  /** Whether the text begins like a quantity and so is not a measure's name. */
  static boolean looksLikeQuantity(String text) {
    return !text.isEmpty()
        && (Character.isDigit(text.charAt(0)) || "-+.".indexOf(text.charAt(0)) >= 0);
  }
}
