package limberboard.boat;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a recorded case ended, as far as it is known.
 *
 * @param outcome how it came out; empty in a file that does not say
 * @param found in words what it was, where no cause of the page was it; otherwise empty
 * @param mend id of the procedure that was done
 * @param minutes what it took the owner in all, from the first question, 0 or more
 * @param mendMinutes what the mend alone took with opening up, 0 or more
 * @param cost what it cost, 0 or more, in the workspace's own money
 */
public record CaseEnd(
    Optional<CaseOutcome> outcome,
    String found,
    Optional<String> mend,
    OptionalDouble minutes,
    OptionalDouble mendMinutes,
    OptionalDouble cost) {
  /** Nothing is known of the end. */
  public static final CaseEnd UNKNOWN =
      new CaseEnd(
          Optional.empty(),
          "",
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());

  /** Nobody knows yet. */
  public static final CaseEnd OPEN = UNKNOWN.with(CaseOutcome.OPEN);

  /** The same with another outcome. */
  public CaseEnd with(CaseOutcome other) {
    return new CaseEnd(Optional.of(other), found, mend, minutes, mendMinutes, cost);
  }
}
