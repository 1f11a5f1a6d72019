package limberboard.trace.review;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;

/**
 * What the plan for one boat makes use of, at every point that is reached often enough.
 *
 * @param checks ids of the checks that it asks for
 * @param mends ids of the mends that it ends at: proposed to the owner, or the mend of the cause
 *     that is named to the yard
 */
record PlanUse(Set<String> checks, Set<String> mends) {
  /** Points of the plan that are reached less often than once in a thousand times do not count. */
  static final double RAREST = 0.001;

  static PlanUse of(Fault fault, BooleanSupplier goOn) {
    PlanUse use = new PlanUse(new HashSet<>(), new HashSet<>());
    DiagnosticTree.of(Trace.begin(fault), RAREST, forks -> goOn.getAsBoolean())
        .forks()
        .forEach(use::note);
    return use;
  }

  private void note(DiagnosticTree.Fork fork) {
    if (fork.step() instanceof DoCheck check) {
      checks.add(check.id());
    } else if (fork.step() instanceof DoMend mend) {
      mends.add(mend.id());
    } else if (fork.step() instanceof CallYard) {
      named(fork.at()).ifPresent(cause -> mends.add(cause.mend()));
    }
  }

  /** The cause that the yard is told: the likeliest that has a name. */
  private static Optional<FaultCause> named(Trace trace) {
    return trace.ranking().stream()
        .filter(ranked -> ranked.chance() > 0)
        .map(RankedCause::cause)
        .filter(cause -> !cause.isSomethingElse())
        .findFirst();
  }
}
