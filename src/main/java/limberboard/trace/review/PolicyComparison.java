package limberboard.trace.review;

import limberboard.effort.Bounds;
import limberboard.effort.EffortModel;
import limberboard.effort.FileOrder;
import limberboard.effort.Following;
import limberboard.effort.MendsOnly;
import limberboard.effort.OneStep;
import limberboard.effort.Planner;
import limberboard.effort.Policy;
import limberboard.effort.Questionnaire;
import limberboard.effort.Questionnaire.Order;
import limberboard.trace.Fault;
import limberboard.trace.Trace;

/**
 * What following several rules costs for one fault on average, each worked out exactly over
 * everything that can happen, in minutes until mended or handed to the yard.
 *
 * @param ours what the trace proposes
 * @param oneStep looking one step ahead
 * @param fileOrder mends as they stand in the file, no checks, and the yard when that is cheaper
 * @param fileQuestions all checks as they stand in the file until a cause is found, then its mend
 * @param mendsOnly mends by chance of cure per minute, no checks, and the yard when that is cheaper
 * @param mostTelling the most informative check first until a cause is found, then its mend
 * @param atLeast proven: no strategy costs less
 * @param exact whether {@code ours} is proven to be the best there is
 */
public record PolicyComparison(
    double ours,
    double oneStep,
    double fileOrder,
    double fileQuestions,
    double mendsOnly,
    double mostTelling,
    double atLeast,
    boolean exact) {
  /** Work after which the bound is taken as it is then: some minutes, up to six gigabytes. */
  public static final long USUAL_WORK = 600_000_000;

  private static final double CLOSE = 1.01;
  private static final double SAME = 1e-6;

  /**
   * Compares the rules. Takes seconds, for the largest faults minutes.
   *
   * @param fault the fault
   * @param work chances that may be weighed for the bound; it stops earlier when ours is proven to
   *     be within one per cent of the best
   */
  public static PolicyComparison of(Fault fault, long work) {
    EffortModel model = fault.model();
    double ours = minutes(model, new Planner());
    double atLeast = Math.min(Bounds.atLeast(model, ours / CLOSE, work), ours);
    return new PolicyComparison(
        ours,
        minutes(model, new OneStep()),
        minutes(model, new FileOrder()),
        minutes(model, new Questionnaire(Order.OF_THE_FILE, Trace.SETTLED)),
        minutes(model, new MendsOnly()),
        minutes(model, new Questionnaire(Order.MOST_TELLING_FIRST, Trace.SETTLED)),
        atLeast,
        ours - atLeast <= SAME);
  }

  private static double minutes(EffortModel model, Policy policy) {
    return new Following(model, policy).minutes();
  }

  /** By how much ours may lie above the best there is, as a share of that, 0 or more. */
  public double aboveBest() {
    return ours / atLeast - 1;
  }

  /** What ours saves against another rule, as a share of that rule's minutes. */
  public double saves(double otherMinutes) {
    return 1 - ours / otherMinutes;
  }
}
