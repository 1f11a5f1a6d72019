package limberboard.desktop.boats;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;

/** Days as a person writes them, and as ISO 8601 does. */
final class Days {
  private static final DateTimeFormatter DAY = pattern("d MMMM uuuu");
  private static final DateTimeFormatter MONTH_DAY = pattern("d MMMM");
  private static final List<DateTimeFormatter> DAYS =
      List.of(DAY, pattern("d MMM uuuu"), DateTimeFormatter.ISO_LOCAL_DATE);
  private static final List<DateTimeFormatter> MONTH_DAYS =
      List.of(MONTH_DAY, pattern("d MMM"), pattern("'--'MM-dd"), pattern("MM-dd"));

  private Days() {}

  private static DateTimeFormatter pattern(String pattern) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .toFormatter(Locale.UK)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  static String written(LocalDate day) {
    return DAY.format(day);
  }

  static String written(MonthDay day) {
    return MONTH_DAY.format(day);
  }

  /** A day: {@code 20 May 2014} or {@code 2014-05-20}. */
  static Optional<LocalDate> day(String text) {
    return read(text, DAYS, (words, form) -> LocalDate.parse(words, form));
  }

  /** A day of the year: {@code 15 April} or {@code --04-15}. */
  static Optional<MonthDay> monthDay(String text) {
    return read(text, MONTH_DAYS, (words, form) -> MonthDay.parse(words, form));
  }

  private static <T> Optional<T> read(
      String text, List<DateTimeFormatter> forms, BiFunction<String, DateTimeFormatter, T> parse) {
    for (DateTimeFormatter form : forms) {
      try {
        return Optional.of(parse.apply(text.strip().replaceAll("\\s+", " "), form));
      } catch (DateTimeParseException e) {
        continue;
      }
    }
    return Optional.empty();
  }
}
