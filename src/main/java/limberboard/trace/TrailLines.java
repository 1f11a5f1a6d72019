package limberboard.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.trace.TrailStep.Answered;
import limberboard.trace.TrailStep.MadeSafe;
import limberboard.trace.TrailStep.MendFailed;
import limberboard.words.Sentences;

/**
 * Puts steps of a trail into words.
 *
 * @param fault the fault
 */
record TrailLines(Fault fault) {

  /** A line for everything that was done, in order. */
  List<TrailEntry> all(Trail trail) {
    List<TrailEntry> entries = new ArrayList<>();
    double[] before = Trail.EMPTY.chances(fault);
    for (int i = 0; i < trail.steps().size(); i++) {
      double[] after = trail.first(i + 1).chances(fault);
      entries.add(entry(trail.steps().get(i), before, after));
      before = after;
    }
    return List.copyOf(entries);
  }

  /** The line for what was done last, beside all the rest; empty at the beginning. */
  Optional<TrailEntry> latest(Trail trail) {
    return trail
        .latest()
        .map(step -> entry(step, trail.without(step).chances(fault), trail.chances(fault)));
  }

  /**
   * One line.
   *
   * @param step what was done
   * @param before the causes' chances before it
   * @param after and after it
   */
  private TrailEntry entry(TrailStep step, double[] before, double[] after) {
    Changes changes = new Changes(fault.causes());
    if (step instanceof Answered answered) {
      String answer = Sentences.spoken(answered.answer());
      return new TrailEntry(
          step, asked(step), answer, changes.said(Sentences.quoted(answer), before, after));
    }
    if (step instanceof MendFailed) {
      String mend = fault.causes().get(fault.causeNumber(step.id())).mendTitle();
      String subject = "That " + Sentences.quoted(mend) + " did not cure it";
      return new TrailEntry(step, mend, "did not cure it", changes.said(subject, before, after));
    }
    if (step instanceof MadeSafe) {
      return new TrailEntry(step, asked(step), "made safe", "It changes no chance.");
    }
    return new TrailEntry(
        step, asked(step), "can't tell", "It changes no chance; the check is not asked again.");
  }

  private String asked(TrailStep step) {
    return fault.checks().get(fault.checkNumber(step.id())).ask();
  }
}
