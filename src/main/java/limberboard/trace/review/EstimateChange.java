package limberboard.trace.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.effort.AnswerModel;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.review.DecisiveEstimate.Wrong;

/**
 * One estimate made twice or half of what it is.
 *
 * @param check number of the check, or {@link #NO_CHECK} when a cause's chance is changed
 * @param answer number of the answer
 * @param cause number of the cause
 * @param value what it is now
 * @param wrong what it is made
 * @param changed the numbers with it changed
 */
record EstimateChange(
    int check, int answer, int cause, double value, Wrong wrong, AnswerModel changed) {
  static final int NO_CHECK = -1;

  /** No likelihood is made more than the word "always" of the pages says. */
  static final double MOST = 0.99;

  /**
   * Everything that can be changed: the chance of every cause, and every likelihood above 0 under
   * every listed cause.
   */
  static List<EstimateChange> all(Trace trace) {
    AnswerModel answers = trace.fault().model().answers();
    List<EstimateChange> all = new ArrayList<>();
    for (int cause = 0; cause < answers.causes(); cause++) {
      for (Wrong wrong : Wrong.values()) {
        all.add(
            new EstimateChange(
                NO_CHECK,
                0,
                cause,
                answers.prior(cause),
                wrong,
                answers.withPrior(cause, wrong.times())));
      }
    }
    for (int check = 0; check < answers.checks(); check++) {
      for (int answer = 0; answer < answers.answers(check); answer++) {
        for (int cause = 0; cause < answers.causes() - 1; cause++) {
          for (Wrong wrong : Wrong.values()) {
            likelihood(answers, check, answer, cause, wrong).ifPresent(all::add);
          }
        }
      }
    }
    return all;
  }

  private static Optional<EstimateChange> likelihood(
      AnswerModel answers, int check, int answer, int cause, Wrong wrong) {
    double value = answers.likelihood(check, answer, cause);
    double changed = wrong == Wrong.TWICE ? Math.min(MOST, 2 * value) : value / 2;
    return value == 0 || answers.answers(check) < 2 || wrong == Wrong.TWICE && changed <= value
        ? Optional.empty()
        : Optional.of(
            new EstimateChange(
                check,
                answer,
                cause,
                value,
                wrong,
                answers.withLikelihood(check, answer, cause, changed)));
  }

  private double instead() {
    return check == NO_CHECK ? changed.prior(cause) : changed.likelihood(check, answer, cause);
  }

  /** What is changed, in the fault's words. */
  DecisiveEstimate decides(Fault fault, NextStep then, double minutesLost) {
    Optional<DecisiveEstimate.Answer> found =
        check == NO_CHECK
            ? Optional.empty()
            : Optional.of(
                new DecisiveEstimate.Answer(
                    fault.checks().get(check), fault.checks().get(check).answers().get(answer)));
    return new DecisiveEstimate(
        fault.causes().get(cause), found, value, wrong, instead(), then, minutesLost);
  }
}
