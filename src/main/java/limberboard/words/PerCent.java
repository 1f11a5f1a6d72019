package limberboard.words;

/** Chances in whole per cent; what is not certain is never written as 0 or 100. */
public final class PerCent {
  private static final double PER_CENT = 100;

  private PerCent() {}

  /** The number alone: {@code 12}, {@code under 1}, {@code over 99}. */
  public static String number(double chance) {
    long whole = Math.round(chance * PER_CENT);
    if (whole == 0 && chance > 0) {
      return "under 1";
    }
    return whole == PER_CENT && chance < 1 ? "over 99" : Long.toString(whole);
  }

  /** With its sign: {@code 12 %}. */
  public static String words(double chance) {
    return number(chance) + " %";
  }
}
