package limberboard.boat;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * An hour meter's reading as the log has it: up to seven digits, and up to six more after a point.
 */
public final class LogHours {
  private static final Pattern FORM = Pattern.compile("[0-9]{1,7}(\\.[0-9]{1,6})?");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

  private LogHours() {}

  /** Reads hours, in hours. */
  public static Typed<Double> read(String text) {
    String bare = text.strip();
    if (FORM.matcher(bare).matches()) {
      return new Typed.Good<>(Double.parseDouble(bare));
    }
    String right = "write hours such as 356.5";
    if (NUMBER.matcher(bare).matches()) {
      return new Typed.Bad<>(
          "\"" + text + "\" has too many digits",
          right + ", with at most seven digits, and six more after the point");
    }
    return new Typed.Bad<>("\"" + text + "\" is no count", right);
  }

  /** Reads hours as people type them, with a point or a comma before the decimals. */
  public static Typed<Double> typed(String text) {
    return read(text.replace(',', '.'));
  }

  /** Says whether a number of hours can be written. */
  public static Typed<Double> check(double hours) {
    return Double.isFinite(hours)
        ? read(write(hours))
        : new Typed.Bad<>("\"" + hours + "\" is no count", "write hours such as 356.5");
  }

  /** The hours as they are written. */
  public static String write(double hours) {
    return BigDecimal.valueOf(hours).stripTrailingZeros().toPlainString();
  }
}
