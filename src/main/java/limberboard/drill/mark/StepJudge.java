package limberboard.drill.mark;

import java.util.List;
import java.util.Optional;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.GiveUp;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Hint;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Open;
import limberboard.drill.DrillStep.Secure;
import limberboard.drill.StepDone;
import limberboard.effort.Regrets;
import limberboard.effort.Regrets.Judged;
import limberboard.library.page.Model.Access;
import limberboard.trace.Fault;
import limberboard.trace.NextStep;

/**
 * Judges a step by what it costs on average.
 *
 * @param fault the fault
 * @param regrets what steps cost more than the best one
 */
record StepJudge(Fault fault, Regrets regrets) {
  /** What a hint costs, in minutes of the skill mark: an estimate. */
  static final double HINT_MINUTES = 10;

  private static final double NOTICED = 0.5;

  /** What is expected with the step and with the best one; empty for what costs nothing. */
  Optional<Judged> judged(StepDone done) {
    if (done.step() instanceof Ask ask) {
      return Optional.of(regrets.check(done.before(), fault.checkNumber(ask.check())));
    } else if (done.step() instanceof Open open) {
      List<String> ids = fault.access().stream().map(Access::id).toList();
      return Optional.of(regrets.open(done.before(), ids.indexOf(open.access())));
    } else if (done.step() instanceof Secure secure) {
      int check = fault.checkNumber(secure.check());
      return done.before().asked().get(check)
          ? Optional.empty()
          : Optional.of(regrets.untold(done.before(), check));
    } else if (done.step() instanceof Mend mend) {
      return done.reply().kind() == Kind.NOT_YOURS
          ? Optional.empty()
          : Optional.of(regrets.mend(done.before(), fault.causeNumber(mend.cause())));
    } else if (done.step() instanceof HandOver handOver) {
      int named = handOver.cause().map(said -> fault.causeNumber(said.cause())).orElse(-1);
      return Optional.of(regrets.yard(done.before(), named));
    } else if (done.step() instanceof GiveUp) {
      return Optional.of(regrets.yard(done.before(), -1));
    }
    return Optional.empty();
  }

  /** What it costs more, in minutes. */
  double regret(StepDone done, Optional<Judged> judged) {
    return done.step() instanceof Hint ? HINT_MINUTES : judged.map(Judged::regret).orElse(0.0);
  }

  /** What was wrong with it. */
  Optional<MistakeKind> mistake(StepDone done, NextStep best, double regret) {
    return regret < NOTICED ? Optional.empty() : Optional.of(kind(done, best));
  }

  private MistakeKind kind(StepDone done, NextStep best) {
    if (done.step() instanceof Hint) {
      return MistakeKind.HINT;
    } else if (done.step() instanceof GiveUp) {
      return MistakeKind.GAVE_UP;
    } else if (done.step() instanceof Secure) {
      return MistakeKind.NOT_LOOKED;
    } else if (done.step() instanceof Open) {
      return MistakeKind.OPENED_IN_VAIN;
    } else if (done.step() instanceof HandOver) {
      return best instanceof NextStep.CallYard
          ? MistakeKind.YARD_TOLD_WRONG
          : MistakeKind.YARD_TOO_SOON;
    } else if (isAgain(done)) {
      return MistakeKind.DONE_AGAIN;
    } else if (best instanceof NextStep.CallYard) {
      return MistakeKind.YARD_TOO_LATE;
    } else if (done.step() instanceof Mend) {
      return best instanceof NextStep.DoMend
          ? MistakeKind.OTHER_MEND_FIRST
          : MistakeKind.MENDED_TOO_SOON;
    }
    return best instanceof NextStep.DoMend ? MistakeKind.CHECKED_ON : MistakeKind.OTHER_CHECK_FIRST;
  }

  private boolean isAgain(StepDone done) {
    return done.step() instanceof Ask ask
            && done.before().asked().get(fault.checkNumber(ask.check()))
        || done.step() instanceof Mend mend
            && done.before().tried().get(fault.causeNumber(mend.cause()));
  }
}
