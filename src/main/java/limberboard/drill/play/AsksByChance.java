package limberboard.drill.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.DrillStep.Named;
import limberboard.drill.DrillStep.Secure;
import limberboard.trace.FaultCause;
import limberboard.trace.FaultCheck;

/**
 * Makes checks by chance until a cause is likely enough, then mends it, or hands it to the yard
 * where that is the yard's work; when nothing is left to ask, it mends the likeliest, and after two
 * mends in vain calls the yard.
 *
 * @param seed what chance comes from
 */
public record AsksByChance(long seed) implements Player {
  private static final double ENOUGH = 0.8;
  private static final int PATIENCE = 2;
  private static final double HUNDRED = 100;

  @Override
  public DrillStep next(DrillRun run) {
    Optional<FaultCheck> unsafe = run.unsafe();
    if (unsafe.isPresent()) {
      return run.isAsked(unsafe.get()) ? new Secure(unsafe.get().id()) : new Ask(unsafe.get().id());
    }
    double[] chances = run.now().chances();
    List<FaultCause> causes = run.drill().fault().causes();
    FaultCause likeliest =
        causes.stream()
            .filter(cause -> !cause.isSomethingElse() && !run.isTried(cause))
            .max(Comparator.comparingDouble(cause -> chances[causes.indexOf(cause)]))
            .orElse(causes.get(causes.size() - 1));
    if (likeliest.isSomethingElse() || mends(run) >= PATIENCE) {
      return new HandOver(Optional.empty());
    }
    double chance = chances[causes.indexOf(likeliest)];
    List<FaultCheck> left = left(run);
    return chance < ENOUGH && !left.isEmpty()
        ? new Ask(one(run, left).id())
        : mend(likeliest, (int) Math.round(HUNDRED * chance));
  }

  private static DrillStep mend(FaultCause cause, int sure) {
    return cause.mendedByOwner()
        ? new Mend(cause.id(), sure)
        : new HandOver(Optional.of(new Named(cause.id(), sure)));
  }

  private static long mends(DrillRun run) {
    return run.done().stream().filter(done -> done.step() instanceof Mend).count();
  }

  private static List<FaultCheck> left(DrillRun run) {
    List<FaultCheck> left = new ArrayList<>(run.drill().fault().checks());
    left.removeIf(check -> run.isAsked(check) || !check.check().skill().ownerMay());
    return left;
  }

  private FaultCheck one(DrillRun run, List<FaultCheck> left) {
    long own = seed * 31 + run.drill().order().seed() * 1_000_003 + run.done().size();
    return left.get(new SplittableRandom(own).split().nextInt(left.size()));
  }
}
