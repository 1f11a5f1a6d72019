package limberboard.effort;

import java.util.List;

/**
 * What can be done next, best first.
 *
 * @param options never empty; the first is the advice
 * @param atLeast proven: whatever is done from here, it costs at least this many minutes on average
 */
public record Advice(List<Option> options, double atLeast) {
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
