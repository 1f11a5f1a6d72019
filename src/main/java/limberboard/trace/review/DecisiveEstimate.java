package limberboard.trace.review;

import java.util.Optional;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;
import limberboard.trace.NextStep;

/**
 * An estimate that decides what is done next: were it wrong by a factor of two, another step would
 * be better.
 *
 * @param cause the cause that the estimate is about
 * @param found the answer whose likelihood under that cause is meant; empty when it is the cause's
 *     chance before any answer
 * @param value what the estimate is now, 0 to 1
 * @param wrong which way it would have to be wrong
 * @param instead what it would then be in truth, 0 to 1: a cause's chance once all chances sum to 1
 *     again; a likelihood not more than {@code always} is
 * @param then what would then be done next
 * @param minutesLost what it would then cost more on average to do what is proposed now
 */
public record DecisiveEstimate(
    FaultCause cause,
    Optional<Answer> found,
    double value,
    Wrong wrong,
    double instead,
    NextStep then,
    double minutesLost) {

  /**
   * An answer to a check.
   *
   * @param check the check
   * @param answer the answer, as in the file
   */
  public record Answer(FaultCheck check, String answer) {}

  /** Which way an estimate is wrong. */
  public enum Wrong {
    /** In truth it is twice that. */
    TWICE(2),
    /** In truth it is half of that. */
    HALF(0.5);

    private final double times;

    Wrong(double times) {
      this.times = times;
    }

    /** The truth divided by the estimate. */
    public double times() {
      return times;
    }
  }

  /** {@code weight} for a cause's chance before any answer, {@code likelihood} for an answer's. */
  public String kind() {
    return found.isPresent() ? "likelihood" : "weight";
  }
}
