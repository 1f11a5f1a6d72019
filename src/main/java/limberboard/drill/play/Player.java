package limberboard.drill.play;

import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.drill.Drill;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.Mend;
import limberboard.trace.Fault;

/** A way of playing a drill. */
@FunctionalInterface
public interface Player {
  /** The next step of a drill that has not ended. */
  DrillStep next(DrillRun run);

  /** Plays a drill to its end. */
  default DrillRun play(Drill drill) {
    DrillRun run = DrillRun.begin(drill);
    while (!run.ended()) {
      run = run.take(next(run));
    }
    return run;
  }

  /** The same way of playing, but the steps of a work's cautions are taken before it. */
  default Player careful() {
    return run -> {
      DrillStep step = next(run);
      List<WorkCaution> left = run.unheeded(cautions(run.drill().fault(), step));
      Optional<DrillStep> first = left.stream().findFirst().map(c -> new DrillStep.Heed(c.id()));
      return first.orElse(step);
    };
  }

  private static List<WorkCaution> cautions(Fault fault, DrillStep step) {
    if (step instanceof Ask ask) {
      return WorkCautions.ofStep(
          fault.first(), fault.checks().get(fault.checkNumber(ask.check())).cautions());
    } else if (step instanceof Mend mend) {
      return WorkCautions.ofStep(
          fault.first(), fault.causes().get(fault.causeNumber(mend.cause())).mendCautions());
    }
    return List.of();
  }
}
