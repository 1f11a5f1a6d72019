package limberboard.desktop.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.trace.CautionsRead;

/**
 * The cautions of a drill: those of its steps, and of which the step has been taken.
 *
 * @param run the drill so far
 */
record DrillCautions(DrillRun run) {

  /** Those that the symptom names first; they stand above every step. */
  List<WorkCaution> first() {
    return run.drill().fault().first().stream().map(DrillCautions::calm).toList();
  }

  /** Those of a step with those of the symptom: all of them, as a trace has them. */
  List<WorkCaution> of(StepOffer offer) {
    return WorkCautions.ofStep(
        first(), offer.cautions().stream().map(DrillCautions::calm).toList());
  }

  /** In a drill nothing is an emergency at this moment: nobody is asked whether it is one. */
  private static WorkCaution calm(WorkCaution each) {
    return new WorkCaution(
        each.page(), each.because(), each.rule(), each.bites(), false, Optional.empty());
  }

  /** Those whose step has been taken, each with every rule that it has in this drill. */
  CautionsRead read() {
    List<String> heeded =
        run.done().stream()
            .map(each -> each.step())
            .filter(DrillStep.Heed.class::isInstance)
            .map(step -> ((DrillStep.Heed) step).caution())
            .toList();
    List<WorkCaution> all = new ArrayList<>(run.drill().cautions());
    new StepOffers(run).all().forEach(offer -> all.addAll(of(offer)));
    return CautionsRead.NONE.with(
        all.stream().filter(caution -> heeded.contains(caution.id())).toList());
  }
}
