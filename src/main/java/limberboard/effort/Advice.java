package limberboard.effort;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What can be done next, best first.
 *
 * @param options never empty; the first is the advice
 * @param atLeast proven: whatever is done from here, it costs at least this many minutes on average
 */
public record Advice(List<Option> options, double atLeast) {
  private static final double NO_DIFFERENCE = 1e-9;

  /**
   * Copies the options.
   *
   * @throws IllegalArgumentException when there are none
   */
  public Advice {
    options = List.copyOf(options);
    if (options.isEmpty()) {
      throw new IllegalArgumentException("there is always the yard; an advice is never empty");
    }
  }

  /**
   * Puts options in order: safety's checks as they are given, then all others by expected minutes.
   * Those within a thousand-millionth of a minute of each other count as equal; then mends come
   * before the yard, the yard before checks, and the page's order decides.
   */
  static Advice inOrder(List<Option> options, double atLeast) {
    Comparator<Option> cheapest =
        Comparator.comparingDouble(
                (Option option) -> Math.rint(option.expectedMinutes() / NO_DIFFERENCE))
            .thenComparing(Option::action)
            .thenComparingInt(Option::index);
    return new Advice(
        Stream.concat(
                options.stream().filter(option -> option.grounds() == Grounds.SAFETY),
                options.stream()
                    .filter(option -> option.grounds() != Grounds.SAFETY)
                    .sorted(cheapest))
            .toList(),
        atLeast);
  }

  /** The advice. */
  public Option best() {
    return options.get(0);
  }

  /**
   * How much the advice may cost more than the best there is: the share of its expected minutes
   * that is not proven to be needed, 0 to 1. At 0 nothing can be better.
   */
  public double gap() {
    return Math.max(0, 1 - atLeast / best().expectedMinutes());
  }

  /** What kind of step an option is. */
  public enum Action {
    /** Mend a cause. */
    MEND,
    /** Hand the fault to the yard. */
    YARD,
    /** Make a check. */
    CHECK
  }

  /** On what grounds an option stands where it stands. */
  public enum Grounds {
    /** Safety asks for it before anything else. */
    SAFETY,
    /** What it costs on average. */
    EFFORT
  }

  /**
   * One thing that can be done next.
   *
   * @param action what kind of step
   * @param index number of the check, or of the cause to mend; 0 for the yard
   * @param minutes what this step costs, with the access it still has to open
   * @param expectedMinutes what everything costs on average when this is done next, from here until
   *     the fault is mended or handed over
   * @param grounds why it stands where it stands
   */
  public record Option(
      Action action, int index, double minutes, double expectedMinutes, Grounds grounds) {
    /** The same option with another expectation. */
    Option expecting(double minutesThen) {
      return new Option(action, index, minutes, minutesThen, grounds);
    }
  }
}
