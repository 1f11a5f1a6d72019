package limberboard.boat;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;
import limberboard.library.problem.Limits;

/** A day as the files of a boat have it: {@code 2026-05-01}, in the years 1900 to 2200. */
public final class LogDay {
  /** The first year that can be written. */
  public static final int FIRST_YEAR = Limits.FIRST_YEAR;

  /** The last year that can be written. */
  public static final int LAST_YEAR = Limits.LAST_YEAR;

  private static final Pattern FORM = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private LogDay() {}

  /** Reads a day. */
  public static Typed<LocalDate> read(String text) {
    String bare = text.strip();
    if (FORM.matcher(bare).matches()) {
      try {
        return check(LocalDate.parse(bare));
      } catch (DateTimeException e) {
        return new Typed.Bad<>(
            "\"" + text + "\" is no date of the calendar", "write it as 2026-05-01");
      }
    }
    return new Typed.Bad<>("\"" + text + "\" is no date", "write it as 2026-05-01");
  }

  /** Says whether a day can be written. */
  public static Typed<LocalDate> check(LocalDate day) {
    return isYear(day.getYear())
        ? new Typed.Good<>(day)
        : new Typed.Bad<>(
            "the year " + day.getYear() + " is out of range",
            "write a year from " + FIRST_YEAR + " to " + LAST_YEAR);
  }

  /** Whether a year can be written. */
  public static boolean isYear(int year) {
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  /** The day as it is written. */
  static String write(LocalDate day) {
    return day.toString();
  }
}
