package limberboard.library.value;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.quantity.Quantities;

/**
 * A figure with its unit as pages say it: {@code 24 h}, {@code 14.4 to 14.7 V}, {@code ten
 * minutes}.
 *
 * @param written as it is written, on one line
 * @param least the least it says
 * @param most the most it says, the same as the least where it is one number
 */
public record FigureValue(String written, Quantity<?> least, Quantity<?> most) {
  private static final String NUMBER = "([-−]?" + NumberWords.PATTERN + ")";
  private static final Pattern FIGURE =
      Pattern.compile(NUMBER + "(?: ?(?:to|–|-) ?" + NUMBER + ")?[ -]?([^\\d\\s-].*)?");
  private static final String WRITE = "; write a number, a space and a unit, such as 24 h";
  private static final int LONGEST = 60;
  private static final double SAME = 1e-9;

  /**
   * Reads a figure; line breaks count as blanks.
   *
   * @throws IllegalArgumentException when it is none, with a message that says what to write
   */
  public static FigureValue parse(String text) {
    String line = text.strip().replaceAll("\\s+", " ");
    Matcher matcher = FIGURE.matcher(line);
    if (line.length() > LONGEST || !matcher.matches()) {
      throw new IllegalArgumentException("\"" + line + "\" is no figure with a unit" + WRITE);
    }
    String unit = matcher.group(3) == null ? "" : matcher.group(3);
    if (unit.isEmpty()) {
      throw new IllegalArgumentException("\"" + line + "\" has no unit" + WRITE);
    }
    Unit<?> known =
        FigureUnits.of(unit)
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "the unit \""
                            + unit
                            + "\" is not known; use one of "
                            + FigureUnits.names()));
    double first = number(matcher.group(1));
    double second = matcher.group(2) == null ? first : number(matcher.group(2));
    return new FigureValue(
        line,
        Quantities.getQuantity(Math.min(first, second), known),
        Quantities.getQuantity(Math.max(first, second), known));
  }

  private static double number(String text) {
    boolean below = text.startsWith("-") || text.startsWith("−");
    double value = NumberWords.of(below ? text.substring(1) : text);
    return below ? -value : value;
  }

  /** Reads a figure where there is one. */
  public static Optional<FigureValue> in(String text) {
    try {
      return Optional.of(parse(text));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** Whether both measure the same: two times, also in hours and in minutes. */
  public boolean isLike(FigureValue other) {
    return least.getUnit().isCompatible(other.least.getUnit());
  }

  /** Whether both say the same, each in its own unit. */
  public boolean equalTo(FigureValue other) {
    return same(least, other.least) && same(most, other.most);
  }

  private static boolean same(Quantity<?> one, Quantity<?> other) {
    double value = one.getValue().doubleValue();
    OptionalDouble in = in(one.getUnit(), other);
    return in.isPresent()
        && Math.abs(in.getAsDouble() - value) <= SAME * Math.max(1, Math.abs(value));
  }

  private static OptionalDouble in(Unit<?> unit, Quantity<?> quantity) {
    try {
      double value = quantity.getValue().doubleValue();
      return OptionalDouble.of(quantity.getUnit().getConverterToAny(unit).convert(value));
    } catch (IncommensurableException e) {
      return OptionalDouble.empty();
    }
  }
}
