package limberboard.trace;

import java.util.Random;
import limberboard.effort.Policy;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.NextStep.MakeSafe;

/**
 * Follows a policy on faults drawn by the model's own chances, with answers and cures drawn by its
 * likelihoods.
 *
 * @param fault the fault
 * @param policy what to follow
 * @param random where chance comes from
 */
record Simulation(Fault fault, Policy policy, Random random) {

  /**
   * How it came out.
   *
   * @param minutes what it cost the owner
   * @param checks how many checks were asked for
   * @param named whether the cause was mended, or led the list when the yard was called
   */
  record Outcome(double minutes, int checks, boolean named) {}

  Outcome once() {
    int cause = drawn(fault.model().beginning().chances());
    Trace trace = Trace.begin(fault, policy);
    double minutes = 0;
    int checks = 0;
    while (true) {
      NextStep next = trace.next();
      minutes += next.minutes();
      if (next instanceof DoCheck ask) {
        checks++;
        trace = answered(trace, ask.check(), cause);
      } else if (next instanceof DoMend mend) {
        boolean right = fault.causeNumber(mend.cause().id()) == cause;
        if (right && random.nextDouble() < mend.cause().cures()) {
          return new Outcome(minutes, checks, true);
        }
        trace = trace.mendTried(mend.cause().id());
      } else if (next instanceof MakeSafe safe) {
        trace = trace.madeSafe(safe.id());
      } else {
        String leading = trace.ranking().get(0).cause().id();
        return new Outcome(minutes, checks, fault.causeNumber(leading) == cause);
      }
    }
  }

  private Trace answered(Trace trace, FaultCheck check, int cause) {
    if (random.nextDouble() < check.check().cantTell().value()) {
      return trace.cantTell(check.id());
    }
    int number = fault.checkNumber(check.id());
    double[] likelihoods = new double[check.answers().size()];
    for (int answer = 0; answer < likelihoods.length; answer++) {
      likelihoods[answer] = fault.model().answers().likelihood(number, answer, cause);
    }
    return trace.answer(check.id(), check.answers().get(drawn(likelihoods)));
  }

  private int drawn(double[] chances) {
    double left = random.nextDouble();
    for (int i = 0; i < chances.length - 1; i++) {
      left -= chances[i];
      if (left < 0) {
        return i;
      }
    }
    return chances.length - 1;
  }
}
