package limberboard.library.problem;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;

/**
 * What a workspace may hold at most: bounds that people never meet and that keep a file gone wrong
 * from holding everything else up. They are counted, never timed, so that a file is read on a slow
 * machine whenever it is read on a fast one. {@code docs/file-formats.md} lists them all.
 */
public final class Limits {
  /** Characters of a page's body. */
  public static final int BODY_CHARACTERS = 200_000;

  /** Lines of a page's body. */
  public static final int BODY_LINES = 5_000;

  /** Characters of one line of a body. */
  public static final int LINE_CHARACTERS = 10_000;

  /** Characters of a body between two blank lines. */
  public static final int RUN_CHARACTERS = 50_000;

  /** Opening angle brackets of a body between two blank lines. */
  public static final int RUN_ANGLES = 1_000;

  /** Attributes of one HTML tag in a body. */
  public static final int TAG_ATTRIBUTES = 100;

  /** Characters of a mail address between angle brackets (RFC 3696, erratum 1690: 254). */
  public static final int MAIL_CHARACTERS = 254;

  /** Upright bars on one line of a body: columns of a table. */
  public static final int LINE_BARS = 100;

  /** Cells of all tables of a page. */
  public static final int TABLE_CELLS = 5_000;

  /** Links and pictures of a page. */
  public static final int LINKS = 1_000;

  /** Characters of a link's or picture's target. */
  public static final int TARGET_CHARACTERS = 2_000;

  /** Parts of a body: paragraphs, items, cells, stretches of text, and so on. */
  public static final int BODY_PARTS = 30_000;

  /** Keys and values of a header, of a boat's file or of a case. */
  public static final int HEADER_ENTRIES = 20_000;

  /** Entries of one list or mapping of a header. */
  public static final int LIST_ENTRIES = 1_000;

  /** Lists and mappings of a header within one another. */
  public static final int HEADER_DEPTH = 30;

  /** Characters of a text of a header. */
  public static final int TEXT_CHARACTERS = 5_000;

  /** Characters of a key or an id. */
  public static final int NAME_CHARACTERS = 200;

  /** Characters of a title. */
  public static final int TITLE_CHARACTERS = 200;

  /** The largest number in a header, a boat's file or a quantity. */
  public static final int LARGEST_NUMBER = 1_000_000_000;

  /** Lines of a list of words for search that are used. */
  public static final int WORD_LINES = 5_000;

  /** Words or phrases on one line of such a list. */
  public static final int LINE_PHRASES = 100;

  /** Lines of synonyms that one word or phrase may stand on. */
  public static final int WORD_GROUPS = 20;

  /** Problems told of one file; the rest are counted. */
  public static final int PROBLEMS_OF_FILE = 100;

  /** The first year that anything is reckoned with. */
  public static final int FIRST_YEAR = 1900;

  /** The last year that anything is reckoned with. */
  public static final int LAST_YEAR = 2200;

  /** The longest period, in years. */
  public static final int PERIOD_YEARS = 200;

  private Limits() {}

  /** Whether a year is one that things are reckoned with. */
  public static boolean isYear(int year) {
    return year >= FIRST_YEAR && year <= LAST_YEAR;
  }

  /** What to do about a year out of range. */
  public static String yearAdvice() {
    return "write a year from " + FIRST_YEAR + " to " + LAST_YEAR;
  }

  /**
   * Reads a day as files have it.
   *
   * @throws IllegalArgumentException when it is no day of the calendar, or out of range, with a
   *     message that says what to write
   */
  public static LocalDate day(String text) {
    LocalDate day;
    try {
      day = LocalDate.parse(text);
    } catch (java.time.DateTimeException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no day of the calendar; write it as 2026-05-01", e);
    }
    if (!isYear(day.getYear())) {
      throw new IllegalArgumentException("\"" + text + "\" is out of range; " + yearAdvice());
    }
    return day;
  }

  /**
   * Reads a period as files have it.
   *
   * @throws IllegalArgumentException when it is none, is nothing, or is longer than {@value
   *     #PERIOD_YEARS} years, with a message that says what to write
   */
  public static Period period(String text) {
    Period period;
    try {
      period = Period.parse(text);
    } catch (java.time.DateTimeException e) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no period; write it as P1Y, P6M, P2W or P10D", e);
    }
    if (period.isNegative() || period.isZero()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no time at all; write a period such as P1Y");
    }
    double years =
        period.getYears()
            + period.getMonths() / 12.0
            + period.getDays() / ChronoUnit.YEARS.getDuration().toDays();
    if (years > PERIOD_YEARS) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is too long; write a period of at most " + PERIOD_YEARS + " years");
    }
    return period;
  }

  /**
   * Reads a number as files have it.
   *
   * @throws IllegalArgumentException when it is none, or out of range, with a message that says
   *     what to write
   */
  public static double number(String text) {
    double number;
    try {
      number = Double.parseDouble(text.strip());
    } catch (NumberFormatException e) {
      number = Double.NaN;
    }
    if (Double.isNaN(number) || !text.matches("[0-9eE+.\\s-]*")) {
      throw new IllegalArgumentException("\"" + text + "\" is not a number; write a number");
    }
    if (Math.abs(number) > LARGEST_NUMBER) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is out of range; write a number up to " + LARGEST_NUMBER);
    }
    return number;
  }
}
