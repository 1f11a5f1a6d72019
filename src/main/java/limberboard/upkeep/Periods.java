package limberboard.upkeep;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;

/** Calendar periods: made shorter or longer, and in words. */
final class Periods {
  private static final double DAYS_IN_MONTH = 365.25 / 12;
  private static final double HAIR = 1e-6;
  private static final int DAYS_IN_WEEK = 7;
  private static final int MONTHS_IN_YEAR = 12;

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

  /** In words: {@code 1 year}, {@code 6 months}, {@code 2 weeks}. */
  static String words(Period period) {
    List<String> parts = new ArrayList<>();
    if (period.toTotalMonths() % MONTHS_IN_YEAR == 0) {
      add(parts, period.toTotalMonths() / MONTHS_IN_YEAR, "year");
    } else if (period.toTotalMonths() < 2 * MONTHS_IN_YEAR) {
      add(parts, period.toTotalMonths(), "month");
    } else {
      add(parts, period.getYears(), "year");
      add(parts, period.getMonths(), "month");
    }
    boolean weeks = period.getDays() % DAYS_IN_WEEK == 0;
    add(parts, weeks ? period.getDays() / DAYS_IN_WEEK : period.getDays(), weeks ? "week" : "day");
    return String.join(" and ", parts);
  }

  private static void add(List<String> parts, long count, String unit) {
    if (count != 0) {
      parts.add(count + " " + unit + (count == 1 ? "" : "s"));
    }
  }
}
