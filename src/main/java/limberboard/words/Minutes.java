package limberboard.words;

/** Working time in words. */
public final class Minutes {
  private static final int IN_HOUR = 60;

  /** How much longer work takes who does it for the first time: half as much again. */
  public static final double FIRST_TIME = 1.5;

  private Minutes() {}

  /**
   * Working time as it is written on a job card: {@code 45 min}, {@code 1 h}, {@code 1 h 30 min}.
   * Rounded to whole minutes; what takes any time at all takes at least one.
   *
   * @param minutes 0 or more
   */
  public static String words(double minutes) {
    long whole = minutes > 0 ? Math.max(1, Math.round(minutes)) : 0;
    if (whole < IN_HOUR) {
      return whole + " min";
    }
    long rest = whole % IN_HOUR;
    return whole / IN_HOUR + " h" + (rest == 0 ? "" : " " + rest + " min");
  }

  /**
   * A sum of working time, with whom it is for: {@code 16 h practised, 24 h the first time}.
   *
   * @param minutes of somebody practised, 0 or more
   */
  public static String forWhom(double minutes) {
    return words(minutes) + " practised, " + words(minutes * FIRST_TIME) + " the first time";
  }
}
