package limberboard.trace.learning;

import java.util.Optional;
import limberboard.boat.RecordedCase;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;

/**
 * What a settled case would have cost, had the trace's proposals been followed: each check gives
 * the answer that the case has, and none where the case has none; only the mend of the true cause
 * cures; the yard looks for the cause when it is told another. Whether a mend of the true cause
 * cures is taken by its chance.
 *
 * @param fault the fault that is traced, whatever it has learnt
 * @param recorded the case
 * @param cause its true cause
 */
record CaseReplay(Fault fault, RecordedCase recorded, String cause) {
  private static final double OVER = 1e-3;

  /** Minutes until it is mended or with the yard. */
  double minutes() {
    Trace trace = Trace.begin(fault);
    double minutes = 0;
    double going = 1;
    while (going > OVER) {
      NextStep next = trace.next();
      if (next instanceof CallYard) {
        return minutes + going * yard(trace);
      }
      minutes += going * next.minutes();
      if (next instanceof DoCheck check) {
        trace = checked(trace, check.id());
      } else if (next instanceof MakeSafe safe) {
        trace = trace.madeSafe(safe.id());
      } else if (next instanceof DoMend mend) {
        if (mend.cause().id().equals(cause)) {
          going *= 1 - mend.cause().cures();
        }
        trace = trace.mendTried(mend.cause().id());
      }
    }
    return minutes;
  }

  private Trace checked(Trace trace, String check) {
    String answer = recorded.answers().getOrDefault(check, "");
    return answer.isEmpty() ? trace.cantTell(check) : trace.answer(check, answer);
  }

  private double yard(Trace trace) {
    Optional<String> named =
        trace.ranking().stream()
            .map(RankedCause::cause)
            .filter(each -> !each.isSomethingElse())
            .map(FaultCause::id)
            .findFirst();
    boolean right = named.filter(cause::equals).isPresent();
    return fault.model().yardMinutes() + (right ? 0 : fault.model().searchMinutes());
  }
}
