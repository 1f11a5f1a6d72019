package limberboard.upkeep.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import limberboard.words.DayText;
import limberboard.words.DayWords;
import limberboard.words.Sentences;

/**
 * Reads one day or several in a row as an owner writes them: {@code 12 Dec}, {@code 12-13 Dec},
 * {@code 12 Dec to 3 Jan}, {@code weekend of 12 Dec}, and all that {@link DayText} reads. Without a
 * year the next such day is meant. Immutable.
 *
 * @param from the first day that is meant
 */
record FreeDayWords(LocalDate from) {
  private static final int MOST = 31;
  private static final int LEAP = 8;
  private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d MMM", Locale.UK);
  private static final Pattern BARE = Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?\\.?");
  private static final Pattern BARE_ROW =
      Pattern.compile("(\\d{1,2})\\.? ?[-\u2013] ?(\\d{1,2})\\.?");
  private static final Pattern WEEKEND =
      Pattern.compile("(?:the )?weekend(?: of| on|:)? (.+)|(.+?) weekend");
  private static final Pattern APART =
      Pattern.compile(
          "(.+?)(?:\\s+(?:to|until|till|-)\\s+|\\s*(?:\\u2013|\\u2014|\\.\\.+)\\s*)(.+)");
  private static final Pattern DAYS_OF_MONTH =
      Pattern.compile("(\\d{1,2}(?:st|nd|rd|th)?)\\.?-(\\d{1,2}(?:st|nd|rd|th)?[.\\s/]*\\p{L}?.*)");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("(\\p{L}{3,}\\.? ?)(\\d{1,2})-(\\d{1,2})(?!\\d)(.*)");
  private static final Pattern EACH_NAMED =
      Pattern.compile("(\\d{1,2}\\.? ?\\p{L}{3,}\\.?(?: ?\\d{4})?)-(\\d.*)");
  private static final Pattern ISO =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})/(\\d{4}-\\d{2}-\\d{2})");
  private static final Pattern WEEKDAY = Pattern.compile("(\\p{L}{3,})\\.? (.+)");

  /**
   * What came of it.
   *
   * @param days in order; none when it could not be read
   * @param why it could not be read, in sentences; empty when it could
   */
  record Row(List<LocalDate> days, String why) {
    /** Copies the list. */
    Row {
      days = List.copyOf(days);
    }
  }

  /**
   * Reads.
   *
   * @param text without hours
   * @param month in which a day without a month lies; empty when that is not known
   */
  Row read(String text, Optional<YearMonth> month) {
    String plain = text.replaceAll("[\\s\\h]+", " ").strip().toLowerCase(Locale.ROOT);
    Matcher weekend = WEEKEND.matcher(plain);
    if (weekend.matches()) {
      String of = weekend.group(1) == null ? weekend.group(2) : weekend.group(1);
      Optional<LocalDate> day = day(of, month);
      return day.map(FreeDayWords::weekend).orElseGet(() -> new Row(List.of(), whichWeekend()));
    }
    if (plain.contains("weekend")) {
      return new Row(List.of(), whichWeekend());
    }
    Matcher bare = BARE_ROW.matcher(plain);
    if (bare.matches()) {
      return between(bare.group(1), bare.group(2), month)
          .orElseGet(() -> new Row(List.of(), noMonth(plain)));
    }
    Optional<Row> apart =
        APART.matcher(plain).matches() || MONTH_FIRST.matcher(plain).matches()
            ? row(plain, month)
            : Optional.empty();
    return apart
        .or(() -> day(plain, month).map(day -> new Row(List.of(day), "")))
        .or(() -> row(plain, month))
        .orElseGet(() -> new Row(List.of(), why(plain)));
  }

  private static Row weekend(LocalDate day) {
    LocalDate saturday =
        day.getDayOfWeek() == DayOfWeek.SUNDAY
            ? day.minusDays(1)
            : day.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
    return new Row(List.of(saturday, saturday.plusDays(1)), "");
  }

  /** Several days in a row; empty when the text does not look like any. */
  private Optional<Row> row(String plain, Optional<YearMonth> month) {
    for (Pattern form : List.of(ISO, APART, EACH_NAMED, DAYS_OF_MONTH)) {
      Matcher two = form.matcher(plain);
      if (two.matches()) {
        Optional<Row> row = between(two.group(1), two.group(2), month);
        if (row.isPresent()) {
          return row;
        }
      }
    }
    Matcher named = MONTH_FIRST.matcher(plain);
    return named.matches()
        ? between(
            named.group(1) + named.group(2) + named.group(4),
            named.group(1) + named.group(3) + named.group(4),
            month)
        : Optional.empty();
  }

  private Optional<Row> between(String first, String last, Optional<YearMonth> month) {
    Optional<LocalDate> known = BARE.matcher(last).matches() ? day(first, month) : Optional.empty();
    Optional<LocalDate> to = day(last, known.map(YearMonth::from).or(() -> month));
    Optional<LocalDate> begin = known.or(() -> day(first, to.map(YearMonth::from)));
    if (to.isEmpty() || begin.isEmpty()) {
      return Optional.empty();
    }
    if (DayText.monthDay(first).isPresent()) {
      LocalDate on = MonthDay.from(begin.get()).atYear(to.get().getYear());
      return Optional.of(row(on.isAfter(to.get()) ? on.minusYears(1) : on, to.get()));
    } else if (DayText.monthDay(last).isPresent() && !BARE.matcher(first).matches()) {
      LocalDate on = MonthDay.from(to.get()).atYear(begin.get().getYear());
      return Optional.of(row(begin.get(), on.isBefore(begin.get()) ? on.plusYears(1) : on));
    }
    return Optional.of(row(begin.get(), to.get()));
  }

  private static Row row(LocalDate first, LocalDate last) {
    if (last.isBefore(first)) {
      return new Row(List.of(), DayWords.of(last) + " is before " + DayWords.of(first) + ".");
    }
    List<LocalDate> days = first.datesUntil(last.plusDays(1)).toList();
    return days.size() > MOST
        ? new Row(
            List.of(), "These are " + days.size() + " days in a row; name at most " + MOST + " so.")
        : new Row(days, "");
  }

  /** One day; empty when it is none. */
  private Optional<LocalDate> day(String plain, Optional<YearMonth> month) {
    Matcher bare = BARE.matcher(plain);
    if (bare.matches()) {
      int number = Integer.parseInt(bare.group(1));
      return month.filter(in -> in.isValidDay(number)).map(in -> in.atDay(number));
    }
    return withYear(plain).day();
  }

  /** The day, where it has no year the next such day. */
  private DayText.Read withYear(String plain) {
    Matcher weekday = WEEKDAY.matcher(plain);
    String named = weekday.matches() && isWeekday(weekday.group(1)) ? weekday.group(1) + " " : "";
    String rest = named.isEmpty() ? plain : weekday.group(2);
    return new DayText(from)
        .read(DayText.monthDay(rest).flatMap(this::next).map(day -> named + day).orElse(plain));
  }

  private static boolean isWeekday(String name) {
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day.name().toLowerCase(Locale.ROOT).startsWith(name)) {
        return true;
      }
    }
    return false;
  }

  private Optional<LocalDate> next(MonthDay day) {
    for (int year = from.getYear(); year <= from.getYear() + LEAP; year++) {
      if (day.isValidYear(year) && !day.atYear(year).isBefore(from)) {
        return Optional.of(day.atYear(year));
      }
    }
    return Optional.empty();
  }

  private String why(String plain) {
    if (BARE.matcher(plain).matches()) {
      return noMonth(plain);
    }
    String known = withYear(plain).why();
    return known.contains("is no day.") || known.contains("year is missing")
        ? Sentences.quoted(plain) + " is no day. " + right()
        : known;
  }

  private String noMonth(String plain) {
    return Sentences.quoted(plain) + " has no month. " + right();
  }

  private String whichWeekend() {
    return "Say which weekend. " + right() + " Without any days, weekends are proposed.";
  }

  /** What would be right, with the next weekend as an example. */
  private String right() {
    LocalDate saturday = from.with(TemporalAdjusters.nextOrSame(DayOfWeek.SATURDAY));
    LocalDate sunday = saturday.plusDays(1);
    String both =
        saturday.getMonth() == sunday.getMonth()
            ? saturday.getDayOfMonth() + "-" + SHORT.format(sunday)
            : SHORT.format(saturday) + " to " + SHORT.format(sunday);
    return "Write days as "
        + both
        + ", or each with its hours, as "
        + SHORT.format(saturday)
        + "=6.";
  }
}
