package limberboard.trace.review;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.effort.Advice.Option;
import limberboard.trace.Fault;
import limberboard.trace.Trace;

/**
 * Which estimates decide what is done next, and are therefore worth measuring first. Every weight
 * and every likelihood is made twice and half of what it is, one at a time, and the trace is asked
 * again. Immutable.
 *
 * <p>What a step costs is reckoned as the step itself and then what the trace expects after each
 * way it can turn out. Where the trace's plan is not proven to be the best, neither is that figure:
 * what the other step would save by the same reckoning with all estimates as they are is taken off,
 * since no estimate is to blame for it.
 *
 * @param at where the trace stands
 * @param changes how many changes were tried; 0 where safety decides what is done next
 * @param estimates those that change the step and cost at least {@link #WORTH_SAYING}, the dearest
 *     first
 */
public record Sensitivity(Trace at, int changes, List<DecisiveEstimate> estimates) {
  /** Minutes on average; below that the plan itself is not known well enough. */
  public static final double WORTH_SAYING = 0.5;

  /** Copies the estimates. */
  public Sensitivity {
    estimates = List.copyOf(estimates);
  }

  /** Tries the estimates at the beginning of a trace. */
  public static Sensitivity of(Fault fault) {
    return of(Trace.begin(fault));
  }

  /**
   * Tries the estimates where a trace stands. Takes as long as asking the trace for its next step
   * some hundred times, shared out between the processors.
   */
  public static Sensitivity of(Trace trace) {
    if (!trace.isSafe()) {
      return new Sensitivity(trace, 0, List.of());
    }
    FirstSteps asEstimated = new FirstSteps(trace);
    List<EstimateChange> changes = EstimateChange.all(trace);
    return new Sensitivity(
        trace,
        changes.size(),
        changes.parallelStream()
            .map(change -> tried(trace, asEstimated, change))
            .flatMap(Optional::stream)
            .sorted(Comparator.comparingDouble(DecisiveEstimate::minutesLost).reversed())
            .toList());
  }

  private static Optional<DecisiveEstimate> tried(
      Trace trace, FirstSteps asEstimated, EstimateChange change) {
    Fault fault = trace.fault();
    Trace changed = trace.on(fault.with(fault.model().with(change.changed())));
    FirstSteps inTruth = new FirstSteps(changed);
    Option proposed = asEstimated.advised();
    Option better = inTruth.advised();
    if (inTruth.deed(better).equals(asEstimated.deed(proposed))) {
      return Optional.empty();
    }
    double anyway = asEstimated.minutes(proposed) - asEstimated.minutes(better);
    double lost = inTruth.minutes(proposed) - inTruth.minutes(better) - Math.max(0, anyway);
    return lost < WORTH_SAYING
        ? Optional.empty()
        : Optional.of(change.decides(fault, changed.next(), lost));
  }
}
