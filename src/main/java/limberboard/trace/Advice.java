package limberboard.trace;

import java.util.List;

/**
 * What can be done next, best first.
 *
 * @param options never empty; the first is the advice
 */
public record Advice(List<Option> options) {
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
    EFFORT,
    /** It is cheap, and the fault should not be handed over without it. */
    TELL_THE_YARD
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
    /** The same option on other grounds. */
    Option on(Grounds others) {
      return new Option(action, index, minutes, expectedMinutes, others);
    }
  }
}
