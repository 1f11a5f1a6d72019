package limberboard.desktop.trace;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Guard;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Alternative;
import limberboard.trace.CautionsRead;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;

/**
 * Traces a fault again after files have changed, or from what was kept of it: the same answers are
 * given to what is there now, and those that are no longer possible are left out. Takes as long as
 * planning; not for the event thread.
 *
 * @param workspace the workspace as it is now
 * @param fitting the boat today
 * @param guard is told of the planning
 */
record TraceReplay(Workspace workspace, Fitting fitting, Guard guard) {

  /**
   * What came of it.
   *
   * @param tracing the trace as it is now
   * @param leftOut how many answers and mends are no longer possible
   */
  record Renewed(BoatTrace tracing, int leftOut) {}

  /** A trace from its beginning; empty when the boat cannot have the symptom. */
  Optional<BoatTrace> begin(String symptom) {
    return page(symptom)
        .map(page -> Trace.begin(fault(page), this::planning).workedOut())
        .map(
            trace ->
                BoatTrace.begin(
                    trace,
                    trace.fault().first().isEmpty(),
                    CautionsRead.NONE,
                    since(fitting.on())));
  }

  private void planning() {
    guard.begins("planning a step");
  }

  private BoatTrace.TraceTimes since(LocalDate begun) {
    return new BoatTrace.TraceTimes(begun, workspace, fitting.on());
  }

  private Optional<Page<Symptom>> page(String symptom) {
    return workspace.library().symptom(symptom).filter(page -> fitting.fits(page.head().fits()));
  }

  private Fault fault(Page<Symptom> page) {
    guard.begins("weighing a boat's causes");
    return Fault.of(page, fitting, workspace.library(), workspace.cases());
  }

  /** A trace as it stands now; empty when the boat can no longer have the symptom. */
  Optional<Renewed> of(BoatTrace tracing) {
    return page(tracing.key().symptom()).map(page -> renewed(tracing, fault(page)));
  }

  private Renewed renewed(BoatTrace tracing, Fault fault) {
    Trace old = tracing.trace();
    if (fault.equals(old.fault())) {
      return new Renewed(tracing.again(old, tracing.picked(), workspace, fitting.on()), 0);
    }
    Optional<Trace> planned = old.readAgain(fault);
    Trace again =
        planned.orElseGet(
            () ->
                given(
                    Trace.begin(fault, this::planning),
                    old.trail().stream().map(TrailEntry::step).toList()));
    again.workedOut();
    Optional<NextStep> picked =
        tracing.picked().map(NextStep::which).flatMap(step -> offered(again, step));
    return new Renewed(
        tracing.again(again, picked, workspace, fitting.on()),
        old.trail().size() - again.trail().size());
  }

  /**
   * A trace from what was kept of it; empty when the boat can no longer have the symptom. What was
   * said of a check that comes first for safety is asked again, and so is what an emergency hangs
   * on: nobody knows what has happened since. What has been read stays read.
   */
  Optional<Renewed> of(KeptTrace kept) {
    return page(kept.symptom()).map(page -> goneOn(kept, page));
  }

  private Renewed goneOn(KeptTrace kept, Page<Symptom> page) {
    Set<String> ofSafety =
        page.details().checks().stream()
            .filter(Check::comesFirst)
            .map(Check::id)
            .collect(Collectors.toSet());
    List<TrailStep> steps =
        kept.steps().stream()
            .filter(step -> step instanceof TrailStep.MendFailed || !ofSafety.contains(step.id()))
            .toList();
    Trace trace = given(Trace.begin(fault(page), this::planning), steps).workedOut();
    List<WorkCaution> first = trace.fault().first();
    boolean passed = kept.cautionsRead() || first.isEmpty();
    BoatTrace tracing = BoatTrace.begin(trace, passed, read(kept, first), since(kept.started()));
    Optional<NextStep> picked = kept.picked().flatMap(step -> offered(trace, step));
    return new Renewed(
        picked.map(tracing::pick).orElse(tracing), steps.size() - trace.trail().size());
  }

  /** Where it was not yet noted which: who had gone on had read what comes before any question. */
  private static CautionsRead read(KeptTrace kept, List<WorkCaution> first) {
    return kept.read()
        .map(read -> new CautionsRead(read, Map.of()))
        .orElseGet(() -> CautionsRead.NONE.with(kept.cautionsRead() ? first : List.of()));
  }

  private static Optional<NextStep> offered(Trace trace, NextStep.Which picked) {
    return trace.alternatives().stream()
        .map(Alternative::step)
        .filter(step -> step.which().equals(picked))
        .findFirst();
  }

  private static Trace given(Trace beginning, List<TrailStep> steps) {
    Trace trace = beginning;
    for (TrailStep step : steps) {
      trace = given(trace, step);
    }
    return trace;
  }

  private static Trace given(Trace trace, TrailStep step) {
    try {
      if (step instanceof TrailStep.Answered answered) {
        return trace.answer(answered.id(), answered.answer());
      }
      if (step instanceof TrailStep.CouldNotTell unsure) {
        return trace.cantTell(unsure.id());
      }
      if (step instanceof TrailStep.MadeSafe safe) {
        return trace.madeSafe(safe.id());
      }
      return trace.mendTried(step.id());
    } catch (IllegalArgumentException e) {
      return trace;
    }
  }
}
