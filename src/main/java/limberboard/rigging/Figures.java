package limberboard.rigging;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import limberboard.workings.QuantityWords;

/** How lengths and forces are written in sums. */
final class Figures {
  private static final int CENTIMETRES = 2;
  private static final int FORCE_FIGURES = 3;
  private static final double KILO = 1000;

  private Figures() {}

  /** Metres to the centimetre. */
  static String metres(double metres) {
    return rounded(metres) + " m";
  }

  /** A number to two places. */
  static String rounded(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal places = BigDecimal.valueOf(value).setScale(CENTIMETRES, RoundingMode.HALF_UP);
    return places.signum() == 0 ? "0" : places.stripTrailingZeros().toPlainString();
  }

  /** Newtons or kilonewtons to three figures. */
  static String force(double newtons) {
    return newtons < KILO ? figures(newtons) + " N" : figures(newtons / KILO) + " kN";
  }

  /** Millimetres as a shop writes them. */
  static String millimetres(double millimetres) {
    return QuantityWords.plain(millimetres) + " mm";
  }

  /** A number to three figures. */
  static String figures(double value) {
    if (!Double.isFinite(value)) {
      return Double.toString(value);
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(FORCE_FIGURES, RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
