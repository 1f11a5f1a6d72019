package limberboard.words;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a day as people write it: {@code 11.3.2027}, {@code 11/3/27}, {@code 11 Mar 2027}, {@code
 * March 11th, 2027}, {@code 2027-03-11}, {@code today}. The day stands before the month; where two
 * numbers could be either, that is told. A year of two digits is the one from 79 years ago to 20
 * years ahead. What cannot be read is refused in a sentence with an example. Examples: {@code
 * days.spec.md} among the test resources. Immutable.
 */
public final class DayText {
  /** The first year that is taken. */
  public static final int FIRST_YEAR = 1900;

  /** The last year that is taken. */
  public static final int LAST_YEAR = 2200;

  private static final int AHEAD = 20;
  private static final int LEAST_LETTERS = 3;
  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

  private static final String BETWEEN = "\\s*[./\\-\\s]\\s*";
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})" + BETWEEN + "(\\d{1,2})" + BETWEEN + "(\\d{1,2})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})" + BETWEEN + "(\\d{1,2})" + BETWEEN + "(\\d{4}|\\d{2})");
  private static final Pattern YEAR_IN_FULL = Pattern.compile("\\d{4}");
  private static final Pattern TOGETHER = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})");
  private static final String ORDINAL = "(\\d{1,2})(?:st|nd|rd|th)?";
  private static final String NAME = "(\\p{L}+)";
  private static final String APART = "[.\\s\\-/]*";
  private static final String YEAR = "(\\d{4}|\\d{2})";
  private static final Pattern NAMED =
      Pattern.compile(ORDINAL + APART + "(?:of )?" + NAME + APART + YEAR + "?");
  private static final Pattern NAME_FIRST =
      Pattern.compile(NAME + APART + ORDINAL + "(?:[.\\s\\-/]+" + YEAR + ")?");
  private static final Pattern NAMED_YEAR_FIRST =
      Pattern.compile("(\\d{4})" + APART + NAME + APART + ORDINAL);
  private static final Pattern NO_YEAR =
      Pattern.compile("(?:--)?(\\d{1,2})" + BETWEEN + "(\\d{1,2})\\.?");

  private final LocalDate today;

  /**
   * A reader.
   *
   * @param today the day that it is: for {@code today}, years of two digits and the examples
   */
  public DayText(LocalDate today) {
    this.today = today;
  }

  /** What came of reading. */
  public sealed interface Read {
    /** The day, if it is one. */
    default Optional<LocalDate> day() {
      return this instanceof Found found ? Optional.of(found.on()) : Optional.empty();
    }

    /** Why it is none, with an example of what would be; empty if it is one. */
    default String why() {
      return this instanceof Refused refused ? refused.sentence() : "";
    }
  }

  /**
   * A day.
   *
   * @param on the day
   * @param couldBeOther whether day and month could change places, so that it should be told back
   */
  public record Found(LocalDate on, boolean couldBeOther) implements Read {}

  /**
   * No day.
   *
   * @param sentence why, with an example of what would be one
   */
  public record Refused(String sentence) implements Read {}

  /** A day in words: {@code 20 May 2014}. */
  public static String written(LocalDate day) {
    return WORDS.format(day);
  }

  /** A day with all four digits of its year, in any way that is read; empty for any other text. */
  public static Optional<LocalDate> withYear(String text) {
    return YEAR_IN_FULL.matcher(text).find()
        ? new DayText(LocalDate.EPOCH).read(text).day()
        : Optional.empty();
  }

  /** Reads a day. */
  public Read read(String text) {
    String plain = plain(text);
    if (plain.isEmpty()) {
      return new Refused("Write a day, such as " + written(today) + ".");
    }
    Optional<LocalDate> word = word(plain);
    if (word.isPresent()) {
      return new Found(word.get(), false);
    }
    Optional<DayOfWeek> weekday = weekday(plain);
    if (weekday.isPresent()) {
      return onWeekday(weekday.get(), plain.replaceFirst("^\\p{L}+\\.?\\s*", ""));
    }
    return numbers(plain).or(() -> names(plain)).orElseGet(() -> unknown(plain));
  }

  private static String plain(String text) {
    return text.replace(',', ' ').replaceAll("[\\s\\h]+", " ").strip().toLowerCase(Locale.ROOT);
  }

  private Optional<LocalDate> word(String plain) {
    return switch (plain) {
      case "today" -> Optional.of(today);
      case "yesterday" -> Optional.of(today.minusDays(1));
      case "tomorrow" -> Optional.of(today.plusDays(1));
      default -> Optional.empty();
    };
  }

  private static Optional<DayOfWeek> weekday(String plain) {
    Matcher first = Pattern.compile("(\\p{L}{3,})\\.? .*").matcher(plain);
    return first.matches()
        ? Arrays.stream(DayOfWeek.values())
            .filter(day -> lower(inWords(day)).startsWith(first.group(1)))
            .findFirst()
        : Optional.empty();
  }

  private Read onWeekday(DayOfWeek weekday, String rest) {
    Read read = read(rest);
    if (read instanceof Found found && found.on().getDayOfWeek() != weekday) {
      String real = inWords(found.on().getDayOfWeek());
      return refused(written(found.on()) + " is a " + real + ", no " + inWords(weekday) + ".");
    }
    return read;
  }

  private Optional<Read> numbers(String plain) {
    Matcher yearFirst = YEAR_FIRST.matcher(plain);
    Matcher together = TOGETHER.matcher(plain);
    Matcher dayFirst = DAY_FIRST.matcher(plain);
    if (yearFirst.matches()) {
      return Optional.of(dated(number(yearFirst, 1), number(yearFirst, 2), number(yearFirst, 3)));
    } else if (together.matches()) {
      return Optional.of(dated(number(together, 1), number(together, 2), number(together, 3)));
    } else if (dayFirst.matches()) {
      int day = number(dayFirst, 1);
      int month = number(dayFirst, 2);
      Read read = dated(year(dayFirst.group(3)), month, day);
      boolean either = day <= Month.values().length && day != month;
      return Optional.of(read.day().<Read>map(on -> new Found(on, either)).orElse(read));
    }
    Matcher noYear = NO_YEAR.matcher(plain);
    return noYear.matches() ? Optional.of(refused("The year is missing.")) : Optional.empty();
  }

  private Optional<Read> names(String plain) {
    Matcher named = NAMED.matcher(plain);
    Matcher nameFirst = NAME_FIRST.matcher(plain);
    Matcher yearFirst = NAMED_YEAR_FIRST.matcher(plain);
    if (yearFirst.matches()) {
      return Optional.of(named(yearFirst.group(1), yearFirst.group(2), number(yearFirst, 3)));
    } else if (named.matches()) {
      return Optional.of(named(named.group(3), named.group(2), number(named, 1)));
    } else if (nameFirst.matches()) {
      return Optional.of(named(nameFirst.group(3), nameFirst.group(1), number(nameFirst, 2)));
    }
    return Optional.empty();
  }

  private Read named(String year, String name, int day) {
    Optional<Month> month = month(name);
    if (month.isEmpty()) {
      return refused("“" + name + "” is no month.");
    } else if (year == null) {
      return refused("The year is missing.");
    }
    return dated(year(year), month.get().getValue(), day);
  }

  private Read dated(int year, int month, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      return refused(
          "The year " + year + " is not taken, only " + FIRST_YEAR + " to " + LAST_YEAR + ".");
    } else if (month < 1 || month > Month.values().length) {
      return refused("There is no month " + month + "; the day stands before the month.");
    } else if (day < 1 || day > YearMonth.of(year, month).lengthOfMonth()) {
      return refused(inWords(Month.of(month)) + " " + year + " has no day " + day + ".");
    }
    return new Found(LocalDate.of(year, month, day), false);
  }

  private Read unknown(String plain) {
    return refused("“" + plain + "” is no day.");
  }

  private Read refused(String what) {
    return new Refused(what + " Write it as " + written(today) + ".");
  }

  /** Reads a day of the year: {@code 15 April}, {@code 15.4.}, {@code --04-15}. */
  public static Optional<MonthDay> monthDay(String text) {
    String plain = plain(text);
    Matcher named = NAMED.matcher(plain);
    Matcher nameFirst = NAME_FIRST.matcher(plain);
    Matcher numbers = NO_YEAR.matcher(plain);
    if (named.matches() && named.group(3) == null) {
      return month(named.group(2)).flatMap(month -> monthDay(month.getValue(), number(named, 1)));
    } else if (nameFirst.matches() && nameFirst.group(3) == null) {
      return month(nameFirst.group(1))
          .flatMap(month -> monthDay(month.getValue(), number(nameFirst, 2)));
    } else if (numbers.matches()) {
      boolean monthFirst = plain.startsWith("--") || plain.matches("\\d{2}-\\d{2}");
      int first = number(numbers, 1);
      int second = number(numbers, 2);
      return monthFirst ? monthDay(first, second) : monthDay(second, first);
    }
    return Optional.empty();
  }

  private static Optional<MonthDay> monthDay(int month, int day) {
    try {
      return Optional.of(MonthDay.of(month, day));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private int year(String digits) {
    int year = Integer.parseInt(digits);
    if (digits.length() > 2) {
      return year;
    }
    int century = today.getYear() / 100 * 100;
    int near = century + year;
    if (near > today.getYear() + AHEAD) {
      return near - 100;
    }
    return near <= today.getYear() + AHEAD - 100 ? near + 100 : near;
  }

  private static Optional<Month> month(String name) {
    if (name.equals("sept")) {
      return Optional.of(Month.SEPTEMBER);
    }
    return Arrays.stream(Month.values())
        .filter(month -> name.length() >= LEAST_LETTERS)
        .filter(month -> lower(inWords(month)).startsWith(name))
        .findFirst();
  }

  private static String inWords(Month month) {
    return month.getDisplayName(TextStyle.FULL, Locale.UK);
  }

  private static int number(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  private static String inWords(DayOfWeek day) {
    return day.getDisplayName(TextStyle.FULL, Locale.UK);
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }
}
