package limberboard.upkeep;

import java.time.Period;

/** Calendar periods made shorter or longer. */
final class Periods {
  private static final double DAYS_IN_MONTH = 365.25 / 12;
  private static final double HAIR = 1e-6;

  private Periods() {}

  /**
   * A period times a factor: whole months stay months, the rest becomes days, a month being 30.44
   * days on average. At least one day.
   *
   * @param times greater than 0
   */
  static Period scaled(Period period, double times) {
    double months = period.toTotalMonths() * times;
    long whole = (long) Math.floor(months + HAIR);
    double rest = Math.max(0, (months - whole) * DAYS_IN_MONTH) + period.getDays() * times;
    Period scaled = Period.of(0, (int) whole, (int) Math.round(rest)).normalized();
    return scaled.isZero() ? Period.ofDays(1) : scaled;
  }
}
