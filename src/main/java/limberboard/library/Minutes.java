package limberboard.library;

/** Working time in words. */
public final class Minutes {
  private static final int IN_HOUR = 60;

  private Minutes() {}

  /**
   * Working time as one says it: {@code 1 minute}, {@code 45 minutes}, {@code 1 h 30 min}; whole
   * minutes, at least one.
   *
   * @param minutes 0 or more
   */
  public static String words(double minutes) {
    long whole = Math.max(1, Math.round(minutes));
    if (whole < IN_HOUR) {
      return whole == 1 ? "1 minute" : whole + " minutes";
    }
    long rest = whole % IN_HOUR;
    return whole / IN_HOUR + " h" + (rest == 0 ? "" : " " + rest + " min");
  }
}
