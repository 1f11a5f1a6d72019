package limberboard.words;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Pattern;

/** Days in words on sheets: {@code 10 May 2014}, never broken at a line's end. Stateless. */
public final class DayWords {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);
  private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
  private static final Pattern ISO_DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  private DayWords() {}

  /** A day. */
  public static String of(LocalDate day) {
    return DAY.format(day).replace(' ', '\u00a0');
  }

  /** A day of a year that is known: {@code 10 May}. */
  public static String withoutYear(LocalDate day) {
    return SHORT.format(day).replace(' ', '\u00a0');
  }

  /** A sentence whose days stand as ISO 8601 has them, with these days in words. */
  public static String in(String sentence) {
    return ISO_DAY.matcher(sentence).replaceAll(found -> words(found.group()));
  }

  private static String words(String iso) {
    try {
      return of(LocalDate.parse(iso));
    } catch (DateTimeParseException e) {
      return iso;
    }
  }
}
