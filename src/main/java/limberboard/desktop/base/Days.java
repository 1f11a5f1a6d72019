package limberboard.desktop.base;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.words.DayText;

/** Days in the one way in which the window writes them, and as they are read. */
public final class Days {
  private static final DateTimeFormatter MONTH_DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.UK);
  private static final Pattern YEAR_IN_FULL = Pattern.compile("\\d{4}");
  private static final Pattern ISO_DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  private Days() {}

  /** A day in words: {@code 20 May 2014}. */
  public static String written(LocalDate day) {
    return DayText.written(day);
  }

  /** A day of the year in words: {@code 15 April}. */
  public static String written(MonthDay day) {
    return MONTH_DAY.format(day);
  }

  /** A day with all four digits of its year, in any way that {@link DayText} reads. */
  public static Optional<LocalDate> day(String text) {
    return YEAR_IN_FULL.matcher(text).find()
        ? new DayText(LocalDate.EPOCH).read(text).day()
        : Optional.empty();
  }

  /** A day of the year: {@code 15 April}, {@code 15.4.} or {@code --04-15}. */
  public static Optional<MonthDay> monthDay(String text) {
    return DayText.monthDay(text);
  }

  /** A sentence whose days stand as ISO 8601 has them, with these days in words. */
  public static String inWords(String sentence) {
    return ISO_DAY
        .matcher(sentence)
        .replaceAll(found -> day(found.group()).map(Days::written).orElse(found.group()));
  }
}
