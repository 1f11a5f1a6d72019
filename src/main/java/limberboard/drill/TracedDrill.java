package limberboard.drill;

import java.util.List;
import limberboard.drill.DrillReply.Kind;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Secure;
import limberboard.trace.Trace;

/** A drill as a trace of its own, which nobody keeps. */
public final class TracedDrill {
  private TracedDrill() {}

  /**
   * A trace with what the owner has told and what was done.
   *
   * @param begun a trace of the drill's fault from the beginning
   */
  public static Trace of(Drill drill, Trace begun, List<StepDone> done) {
    Trace trace =
        drill
            .toldUnasked()
            .map(check -> begun.answer(check.id(), drill.answer(check).orElseThrow()))
            .orElse(begun);
    for (StepDone each : done) {
      trace = with(trace, each);
    }
    return trace;
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
}
