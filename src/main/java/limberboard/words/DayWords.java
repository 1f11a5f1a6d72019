package limberboard.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days in words on sheets: {@code 10 May 2014}, never broken at a line's end. Stateless. */
public final class DayWords {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);
  private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.UK);

  private DayWords() {}

  /** A day. */
  public static String of(LocalDate day) {
    return DAY.format(day).replace(' ', '\u00a0');
  }

  /** A day of a year that is known: {@code 10 May}. */
  public static String withoutYear(LocalDate day) {
    return SHORT.format(day).replace(' ', '\u00a0');
  }
}
