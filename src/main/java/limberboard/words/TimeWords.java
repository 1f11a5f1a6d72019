package limberboard.words;

import java.time.MonthDay;
import java.time.Period;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Times in words. */
public final class TimeWords {
  private static final int DAYS_IN_WEEK = 7;
  private static final int MONTHS_IN_YEAR = 12;
  private static final List<String> ORDINALS =
      List.of(
          "", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
          "tenth");

  private TimeWords() {}

  /** A period: {@code 2 weeks}, {@code 18 months}, {@code 2 years and 6 months}. */
  public static String period(Period period) {
    List<String> parts = new ArrayList<>();
    long months = period.toTotalMonths();
    boolean inMonths = months < 2 * MONTHS_IN_YEAR && months % MONTHS_IN_YEAR != 0;
    add(parts, inMonths ? 0 : months / MONTHS_IN_YEAR, "year");
    add(parts, inMonths ? months : months % MONTHS_IN_YEAR, "month");
    boolean weeks = period.getDays() % DAYS_IN_WEEK == 0;
    add(parts, weeks ? period.getDays() / DAYS_IN_WEEK : period.getDays(), weeks ? "week" : "day");
    return parts.isEmpty() ? "no time" : String.join(" and ", parts);
  }

  /** A day of any year: {@code 15 April}. */
  public static String day(MonthDay day) {
    return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.UK);
  }

  /** How often: {@code every year}, {@code every 6 months}. */
  public static String every(Period period) {
    String words = period(period);
    boolean single = words.startsWith("1 ") && !words.contains(" and ");
    return "every " + (single ? words.substring(2) : words);
  }

  /** How often: {@code every season}, {@code every two seasons}. */
  public static String every(int count, String unit) {
    return count == 1 ? "every " + unit : "every " + CountWords.word(count) + " " + unit + "s";
  }

  /** From when on: {@code from the third season on}. */
  public static String from(Period age) {
    boolean wholeYears = age.getMonths() == 0 && age.getDays() == 0;
    int season = age.getYears() + 1;
    return wholeYears && season < ORDINALS.size()
        ? "from the boat's " + ORDINALS.get(season) + " season on"
        : "once the boat is " + period(age) + " old";
  }

  private static void add(List<String> parts, long number, String unit) {
    if (number != 0) {
      parts.add(CountWords.of(number, unit));
    }
  }
}
