package limberboard.desktop.trace;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;

/**
 * One boat's trace as it stands. Immutable.
 *
 * @param trace the answers so far
 * @param cautionsRead whether the symptom's cautions have been read
 * @param picked a check chosen instead of the one advised, until it is answered
 * @param mended what was mended, once it is; none when the cause is not known
 * @param over whether the fault is mended
 * @param since when it was begun, and what was read when it was last worked out
 */
record BoatTrace(
    Trace trace,
    boolean cautionsRead,
    Optional<NextStep> picked,
    Optional<FaultCause> mended,
    boolean over,
    TraceTimes since) {

  /**
   * Times of a trace.
   *
   * @param begun the day it was begun
   * @param workspace the workspace it was last worked out for
   * @param day the day it was last worked out for
   */
  record TraceTimes(LocalDate begun, Workspace workspace, LocalDate day) {}

  static BoatTrace begin(Trace trace, boolean cautionsRead, TraceTimes since) {
    return new BoatTrace(trace, cautionsRead, Optional.empty(), Optional.empty(), false, since);
  }

  TraceKey key() {
    return new TraceKey(trace.fault().fitting().boat().id(), trace.fault().page().id());
  }

  BoatTrace read() {
    return new BoatTrace(trace, true, picked, mended, over, since);
  }

  BoatTrace with(Trace changed) {
    return new BoatTrace(changed, cautionsRead, Optional.empty(), Optional.empty(), false, since);
  }

  /** The same answers on a fault that has been read again. */
  BoatTrace again(
      Trace renewed, Optional<NextStep> stillPicked, Workspace workspace, LocalDate day) {
    return new BoatTrace(
        renewed,
        cautionsRead,
        stillPicked,
        mended,
        over,
        new TraceTimes(since.begun(), workspace, day));
  }

  BoatTrace pick(NextStep step) {
    return new BoatTrace(trace, cautionsRead, Optional.of(step), mended, over, since);
  }

  BoatTrace mended(Optional<FaultCause> cause) {
    return new BoatTrace(trace, cautionsRead, Optional.empty(), cause, true, since);
  }

  boolean isOf(Workspace workspace, LocalDate day) {
    return since.workspace() == workspace && since.day().equals(day);
  }

  NextStep step() {
    return picked.orElseGet(trace::next);
  }

  Stage stage() {
    if (!cautionsRead) {
      return Stage.CAUTIONS;
    }
    if (over) {
      return Stage.MENDED;
    }
    NextStep step = step();
    if (step instanceof NextStep.DoCheck || step instanceof NextStep.MakeSafe) {
      return Stage.CHECK;
    }
    return step instanceof NextStep.DoMend ? Stage.MEND : Stage.YARD;
  }

  /** What is kept of it until next time. */
  KeptTrace kept() {
    return new KeptTrace(
        key().boat(),
        key().symptom(),
        since.begun(),
        cautionsRead,
        trace.trail().stream().map(TrailEntry::step).toList(),
        picked.map(NextStep::which));
  }
}
