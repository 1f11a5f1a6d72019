package limberboard.drill.play;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import limberboard.drill.Drill;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Secure;
import limberboard.drill.StepDone;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;

/**
 * Does what a real trace proposes, told what the drill answers: it knows nothing of how drills are
 * marked. Remembers the proposals of a fault; one object belongs to one thread.
 */
public final class FollowsAdvice implements Player {
  private static final double HUNDRED = 100;

  private final Map<Trace, Trace> known = new HashMap<>();

  /** Makes the player. */
  public FollowsAdvice() {}

  @Override
  public DrillStep next(DrillRun run) {
    Trace trace = trace(run);
    NextStep next = trace.next();
    if (next instanceof NextStep.DoCheck check) {
      return new Ask(check.id());
    } else if (next instanceof NextStep.MakeSafe safe) {
      return new Secure(safe.id());
    } else if (next instanceof NextStep.DoMend mend) {
      return new Mend(mend.cause().id(), sure(trace, mend.cause()));
    }
    return new HandOver(
        trace.ranking().stream()
            .map(RankedCause::cause)
            .filter(cause -> !cause.isSomethingElse())
            .findFirst()
            .map(cause -> new Named(cause.id(), sure(trace, cause))));
  }

  private Trace trace(DrillRun run) {
    Drill drill = run.drill();
    Trace begun = Trace.begin(drill.fault());
    Optional<Trace> told =
        drill
            .toldUnasked()
            .map(check -> begun.answer(check.id(), drill.answer(check).orElseThrow()));
    Trace trace = told.orElse(begun);
    for (StepDone done : run.done()) {
      trace = with(trace, done);
    }
    return known.computeIfAbsent(trace, same -> same);
  }

  private static Trace with(Trace trace, StepDone done) {
    if (done.step() instanceof Ask ask) {
      return done.reply().kind() == Kind.ANSWER
          ? trace.answer(ask.check(), done.reply().said())
          : trace.cantTell(ask.check());
    } else if (done.step() instanceof Secure secure) {
      return trace.madeSafe(secure.check());
    } else if (done.step() instanceof Mend mend && done.reply().kind() == Kind.NOT_CURED) {
      return trace.mendTried(mend.cause());
    }
    return trace;
  }

  private static int sure(Trace trace, FaultCause cause) {
    return trace.ranking().stream()
        .filter(ranked -> ranked.cause().equals(cause))
        .mapToInt(ranked -> (int) Math.round(HUNDRED * ranked.chance()))
        .findFirst()
        .orElse(0);
  }
}
