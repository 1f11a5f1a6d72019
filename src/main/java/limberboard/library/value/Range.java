package limberboard.library.value;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range of whole numbers (years, hull numbers), both ends included, written as an ISO 8601-2
 * interval: {@code 2012/2018}, {@code 2016/..}, {@code ../2015} or {@code 2014}.
 *
 * @param from the first number, empty when open
 * @param to the last number, empty when open; not before {@code from}
 */
public record Range(OptionalInt from, OptionalInt to) {
  private static final Pattern INTERVAL = Pattern.compile("(\\d{1,6}|\\.\\.)/(\\d{1,6}|\\.\\.)");
  private static final Pattern SINGLE = Pattern.compile("\\d{1,6}");

  /**
   * Checks the order of the ends.
   *
   * @throws IllegalArgumentException when {@code to} is before {@code from}
   */
  public Range {
    if (from.isPresent() && to.isPresent() && to.getAsInt() < from.getAsInt()) {
      throw new IllegalArgumentException(
          "the range ends before it begins; write the smaller number first");
    }
  }

  /**
   * Reads a range.
   *
   * @throws IllegalArgumentException when the text is not a range, with a message that says what is
   */
  public static Range parse(String text) {
    if (SINGLE.matcher(text).matches()) {
      OptionalInt both = OptionalInt.of(Integer.parseInt(text));
      return new Range(both, both);
    }
    Matcher interval = INTERVAL.matcher(text);
    if (!interval.matches()) {
      throw new IllegalArgumentException(
          "a range is written 2012/2018, 2016/.., ../2015 or 2014, not \"" + text + "\"");
    }
    return new Range(end(interval.group(1)), end(interval.group(2)));
  }

  private static OptionalInt end(String text) {
    return text.equals("..") ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(text));
  }

  /** Whether the number lies in the range. */
  public boolean contains(int number) {
    return (from.isEmpty() || from.getAsInt() <= number)
        && (to.isEmpty() || number <= to.getAsInt());
  }

  /** The range as it is written in files. */
  @Override
  public String toString() {
    if (from.equals(to) && from.isPresent()) {
      return Integer.toString(from.getAsInt());
    }
    return end(from) + "/" + end(to);
  }

  private static String end(OptionalInt end) {
    return end.isPresent() ? Integer.toString(end.getAsInt()) : "..";
  }
}
