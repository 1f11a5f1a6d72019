package limberboard.desktop.base;

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
import java.util.regex.Pattern;

/** Days as a person writes them, and as ISO 8601 does. */
public final class Days {
  private static final DateTimeFormatter DAY = pattern("d MMMM uuuu");
  private static final DateTimeFormatter MONTH_DAY = pattern("d MMMM");
  private static final List<DateTimeFormatter> DAYS =
      List.of(DAY, pattern("d MMM uuuu"), DateTimeFormatter.ISO_LOCAL_DATE);
  private static final List<DateTimeFormatter> MONTH_DAYS =
      List.of(MONTH_DAY, pattern("d MMM"), pattern("'--'MM-dd"), pattern("MM-dd"));

  private static final Pattern ISO_DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");

  private Days() {}

  private static DateTimeFormatter pattern(String pattern) {
    return new DateTimeFormatterBuilder()
        .parseCaseInsensitive()
        .appendPattern(pattern)
        .toFormatter(Locale.UK)
        .withResolverStyle(ResolverStyle.STRICT);
  }

  /** A day in words: {@code 20 May 2014}. */
  public static String written(LocalDate day) {
    return DAY.format(day);
  }

  /** A day of the year in words: {@code 15 April}. */
  public static String written(MonthDay day) {
    return MONTH_DAY.format(day);
  }

  /** A day: {@code 20 May 2014} or {@code 2014-05-20}. */
  public static Optional<LocalDate> day(String text) {
    return read(text, DAYS, (words, form) -> LocalDate.parse(words, form));
  }

  /** A day of the year: {@code 15 April} or {@code --04-15}. */
  public static Optional<MonthDay> monthDay(String text) {
    return read(text, MONTH_DAYS, (words, form) -> MonthDay.parse(words, form));
  }

  /** A sentence whose days stand as ISO 8601 has them, with these days in words. */
  public static String inWords(String sentence) {
    return ISO_DAY
        .matcher(sentence)
        .replaceAll(found -> day(found.group()).map(Days::written).orElse(found.group()));
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
