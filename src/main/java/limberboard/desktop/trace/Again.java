package limberboard.desktop.trace;

import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;

/**
 * Traces a fault again after its page or its boat has been changed: the same answers are given to
 * what is there now, and those that are no longer possible are left out.
 *
 * @param workspace the workspace as it is now
 * @param today the day
 */
record Again(Workspace workspace, LocalDate today) {

  static boolean stillThere(Tracing tracing, Workspace workspace) {
    Fitting fitting = tracing.trace().fault().fitting();
    return workspace.boat(fitting.boat().id()).isPresent()
        && workspace
            .library()
            .symptom(tracing.trace().fault().page().id())
            .filter(page -> fitting.fits(page.head().fits()))
            .isPresent();
  }

  Tracing of(Tracing tracing) {
    Trace old = tracing.trace();
    Optional<Trace> renewed =
        workspace
            .boat(old.fault().fitting().boat().id())
            .flatMap(
                boat ->
                    workspace
                        .library()
                        .symptom(old.fault().page().id())
                        .map(
                            page ->
                                Fault.of(
                                    page,
                                    new Fitting(boat, today),
                                    workspace.library(),
                                    workspace.cases())))
            .map(Trace::begin);
    if (renewed.isEmpty()) {
      return tracing;
    }
    Trace again = renewed.get();
    for (TrailEntry entry : old.trail()) {
      again = given(again, entry.step());
    }
    Tracing kept = tracing.with(again);
    return tracing.over() ? kept.mended(tracing.mended()) : kept;
  }

  private static Trace given(Trace trace, TrailStep step) {
    try {
      if (step instanceof TrailStep.Answered answered) {
        return trace.answer(answered.id(), answered.answer());
      }
      if (step instanceof TrailStep.CouldNotTell unsure) {
        return trace.cantTell(unsure.id());
      }
      return trace.mendTried(step.id());
    } catch (IllegalArgumentException e) {
      return trace;
    }
  }
}
