package limberboard.desktop.trace;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.trace.CautionsRead;
import limberboard.trace.CautionsRead.Form;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;

/**
 * One boat's trace as it stands. Immutable.
 *
 * @param trace the answers so far
 * @param passed whether somebody has gone on from the symptom's cautions to the first question
 * @param read which cautions have been read in it
 * @param picked a check chosen instead of the one advised, until it is answered
 * @param mended what was mended, once it is; none when the cause is not known
 * @param over whether the fault is mended
 * @param since when it was begun, and what was read when it was last worked out
 */
record BoatTrace(
    Trace trace,
    boolean passed,
    CautionsRead read,
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

  static BoatTrace begin(Trace trace, boolean passed, CautionsRead read, TraceTimes since) {
    return new BoatTrace(trace, passed, read, Optional.empty(), Optional.empty(), false, since);
  }

  TraceKey key() {
    return new TraceKey(trace.fault().fitting().boat().id(), trace.fault().page().id());
  }

  /** The symptom's cautions, which come before any question. */
  List<WorkCaution> first() {
    return trace.fault().first();
  }

  /** The same with what has been read by now; the trace goes on where nothing is left to read. */
  BoatTrace reading(CautionsRead now) {
    boolean nothingLeft = first().stream().allMatch(each -> now.form(each) == Form.FOLDED);
    return new BoatTrace(trace, passed || nothingLeft, now, picked, mended, over, since);
  }

  /** Goes on from the symptom's cautions, which have been read; not past a question. */
  BoatTrace goingOn() {
    if (!read.in(Form.QUESTION, first()).isEmpty()) {
      return this;
    }
    List<WorkCaution> seen =
        first().stream().filter(each -> read.form(each) != Form.FOLDED).toList();
    return new BoatTrace(trace, true, read.with(seen), picked, mended, over, since);
  }

  /** What was read and gone past in another state of the same trace holds here too. */
  BoatTrace knowing(BoatTrace other) {
    return new BoatTrace(trace, other.passed, other.read, picked, mended, over, since);
  }

  BoatTrace with(Trace changed) {
    return new BoatTrace(changed, passed, read, Optional.empty(), Optional.empty(), false, since);
  }

  /** The same answers on a fault that has been read again. */
  BoatTrace again(
      Trace renewed, Optional<NextStep> stillPicked, Workspace workspace, LocalDate day) {
    return new BoatTrace(
        renewed,
        passed,
        read,
        stillPicked,
        mended,
        over,
        new TraceTimes(since.begun(), workspace, day));
  }

  BoatTrace pick(NextStep step) {
    return new BoatTrace(trace, passed, read, Optional.of(step), mended, over, since);
  }

  BoatTrace mended(Optional<FaultCause> cause) {
    return new BoatTrace(trace, passed, read, Optional.empty(), cause, true, since);
  }

  boolean isOf(Workspace workspace, LocalDate day) {
    return since.workspace() == workspace && since.day().equals(day);
  }

  NextStep step() {
    return picked.orElseGet(trace::next);
  }

  Stage stage() {
    if (!passed || first().stream().anyMatch(this::comesFirst)) {
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

  private boolean comesFirst(WorkCaution caution) {
    Form form = read.form(caution);
    return form == Form.QUESTION || form == Form.WHOLE;
  }

  /** What is kept of it until next time. */
  KeptTrace kept() {
    return new KeptTrace(
        key().boat(),
        key().symptom(),
        since.begun(),
        passed,
        Optional.of(read.read()),
        trace.trail().stream().map(TrailEntry::step).toList(),
        picked.map(NextStep::which));
  }
}
