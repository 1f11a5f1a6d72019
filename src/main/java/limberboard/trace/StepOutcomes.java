package limberboard.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.effort.AnswerModel;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;

/**
 * Finds how a step can turn out.
 *
 * @param trace where it is done
 * @param chances the causes' chances there
 */
record StepOutcomes(Trace trace, double[] chances) {

  /** What can come of a step, in the page's order; nothing for the yard. */
  List<StepOutcome> of(NextStep step) {
    if (step instanceof DoCheck check) {
      return ofCheck(check.check());
    } else if (step instanceof DoMend mend) {
      return ofMend(mend.cause());
    } else if (step instanceof MakeSafe safe) {
      return List.of(
          new StepOutcome(new Finding.MadeSafe(), 1, Optional.of(trace.madeSafe(safe.id()))));
    } else if (step instanceof CallYard) {
      return List.of();
    }
    throw new IllegalArgumentException("unknown step: " + step);
  }

  private List<StepOutcome> ofCheck(FaultCheck check) {
    AnswerModel answers = trace.fault().model().answers();
    int number = trace.fault().checkNumber(check.id());
    double cantTell = trace.fault().model().checks().get(number).cantTell();
    List<StepOutcome> outcomes = new ArrayList<>();
    for (int answer = 0; answer < check.answers().size(); answer++) {
      double chance = 0;
      for (int cause = 0; cause < chances.length; cause++) {
        chance += chances[cause] * answers.likelihood(number, answer, cause);
      }
      String said = check.answers().get(answer);
      if (chance * (1 - cantTell) > 0) {
        outcomes.add(
            new StepOutcome(
                new Finding.Answer(said),
                chance * (1 - cantTell),
                Optional.of(trace.answer(check.id(), said))));
      }
    }
    if (cantTell > 0) {
      outcomes.add(
          new StepOutcome(
              new Finding.CouldNotTell(), cantTell, Optional.of(trace.cantTell(check.id()))));
    }
    return outcomes;
  }

  private List<StepOutcome> ofMend(FaultCause cause) {
    double cured = chances[trace.fault().causeNumber(cause.id())] * cause.cures();
    List<StepOutcome> outcomes = new ArrayList<>();
    outcomes.add(new StepOutcome(new Finding.Mended(), cured, Optional.empty()));
    if (cured < 1) {
      outcomes.add(
          new StepOutcome(
              new Finding.NotCured(), 1 - cured, Optional.of(trace.mendTried(cause.id()))));
    }
    return outcomes;
  }
}
