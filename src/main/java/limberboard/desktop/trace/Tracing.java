package limberboard.desktop.trace;

import java.util.Optional;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;

/**
 * One boat's trace as it stands. Immutable.
 *
 * @param trace the answers so far
 * @param cautionsRead whether the symptom's cautions have been read
 * @param picked a check chosen instead of the one advised, until it is answered
 * @param mended what was mended, once it is; empty text of an unknown cause is not used
 * @param over whether the fault is mended
 */
record Tracing(
    Trace trace,
    boolean cautionsRead,
    Optional<NextStep> picked,
    Optional<FaultCause> mended,
    boolean over) {

  static Tracing begin(Trace trace, boolean cautionsRead) {
    return new Tracing(trace, cautionsRead, Optional.empty(), Optional.empty(), false);
  }

  String boat() {
    return trace.fault().fitting().boat().id();
  }

  String symptom() {
    return trace.fault().page().id();
  }

  Tracing read() {
    return new Tracing(trace, true, picked, mended, over);
  }

  Tracing with(Trace changed) {
    return new Tracing(changed, cautionsRead, Optional.empty(), Optional.empty(), false);
  }

  Tracing pick(NextStep step) {
    return new Tracing(trace, cautionsRead, Optional.of(step), mended, over);
  }

  Tracing mended(Optional<FaultCause> cause) {
    return new Tracing(trace, cautionsRead, Optional.empty(), cause, true);
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
    if (step instanceof NextStep.DoCheck) {
      return Stage.CHECK;
    }
    return step instanceof NextStep.DoMend ? Stage.MEND : Stage.YARD;
  }
}
