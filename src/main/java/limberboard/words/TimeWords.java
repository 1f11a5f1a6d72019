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
  private static final List<String> SMALL =
      List.of("", "", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");
  private static final List<String> ORDINALS =
      List.of(
          "", "first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth",
          "tenth");

  private TimeWords() {}

  /** A period: {@code 6 months}, {@code 1 year and 6 months}. */
  public static String period(Period period) {
    List<String> parts = new ArrayList<>();
    add(parts, period.getYears(), "year");
    add(parts, period.getMonths(), "month");
    addDays(parts, period.getDays());
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
    return count == 1 ? "every " + unit : "every " + number(count) + " " + unit + "s";
  }

  /** From when on: {@code from the third season on}. */
  public static String from(Period age) {
    boolean wholeYears = age.getMonths() == 0 && age.getDays() == 0;
    int season = age.getYears() + 1;
    return wholeYears && season < ORDINALS.size()
        ? "from the boat's " + ORDINALS.get(season) + " season on"
        : "once the boat is " + period(age) + " old";
  }

  /** A small number as a word. */
  static String number(int number) {
    return number > 1 && number < SMALL.size() ? SMALL.get(number) : Integer.toString(number);
  }

  private static void addDays(List<String> parts, int days) {
    if (days % DAYS_IN_WEEK == 0) {
      add(parts, days / DAYS_IN_WEEK, "week");
    } else {
      add(parts, days, "day");
    }
  }

  private static void add(List<String> parts, int number, String unit) {
    if (number != 0) {
      parts.add(number + " " + unit + (number == 1 ? "" : "s"));
    }
  }
}
