package limberboard.trace;

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

  /**
   * One line.
   *
   * @param step what was done
   * @param before the causes' chances before it
   * @param after and after it
   */
  TrailEntry entry(TrailStep step, double[] before, double[] after) {
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
