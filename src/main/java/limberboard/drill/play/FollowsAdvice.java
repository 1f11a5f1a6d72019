package limberboard.drill.play;

import java.util.HashMap;
import java.util.Map;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Secure;
import limberboard.drill.TracedDrill;
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
    Trace trace = TracedDrill.of(run.drill(), Trace.begin(run.drill().fault()), run.done());
    return known.computeIfAbsent(trace, same -> same);
  }

  private static int sure(Trace trace, FaultCause cause) {
    return trace.ranking().stream()
        .filter(ranked -> ranked.cause().equals(cause))
        .mapToInt(ranked -> (int) Math.round(HUNDRED * ranked.chance()))
        .findFirst()
        .orElse(0);
  }
}
