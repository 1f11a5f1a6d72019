package limberboard.workings;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers without the dust of binary arithmetic, for programs to read. */
public final class Rounded {
  private static final MathContext FIGURES = new MathContext(12);

  private Rounded() {}

  /** The number to twelve figures. */
  public static double of(double value) {
    return Double.isFinite(value) ? new BigDecimal(value).round(FIGURES).doubleValue() : value;
  }

  /** The same as text, without an exponent. */
  public static String text(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(FIGURES);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
