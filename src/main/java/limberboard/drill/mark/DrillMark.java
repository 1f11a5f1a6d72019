package limberboard.drill.mark;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep.Ask;
import limberboard.drill.DrillStep.GiveUp;
import limberboard.drill.DrillStep.HandOver;
import limberboard.drill.DrillStep.Mend;
import limberboard.drill.StepDone;
import limberboard.trace.NextStep;

/**
 * A drill, marked.
 *
 * @param run what was played
 * @param steps each step, gone through
 * @param certainties what the student said to be how sure of
 * @param plan the same hidden fault with the same answers, played by the best plan
 * @param expected what the best plan comes to on average from the beginning, in minutes
 * @param atLeast what nothing goes below on average from the beginning, in minutes: proven
 */
public record DrillMark(
    DrillRun run,
    List<StepMark> steps,
    List<Certainty> certainties,
    DrillRun plan,
    double expected,
    double atLeast) {
  /** Copies the lists. */
  public DrillMark {
    steps = List.copyOf(steps);
    certainties = List.copyOf(certainties);
  }

  /**
   * The skill mark: what the way of playing cost on average more than the best plan, in minutes; 0
   * is best. Luck does not count.
   */
  public double regret() {
    return steps.stream().mapToDouble(StepMark::regret).sum();
  }

  /** The skill mark against what the best plan comes to: 0 is best, 1 is twice the effort. */
  public double regretShare() {
    return regret() / Math.max(1, expected);
  }

  /** How much of what the best steps are expected to cost is not proven, in minutes. */
  public double doubt() {
    return steps.stream().mapToDouble(StepMark::doubt).max().orElse(0);
  }

  /** Everything that could have hurt somebody, in order. */
  public List<DrillDanger> dangers() {
    return steps.stream().flatMap(step -> step.dangers().stream()).toList();
  }

  /** What each kind of mistake cost, in minutes. */
  public Map<MistakeKind, Double> mistakes() {
    Map<MistakeKind, Double> all = new EnumMap<>(MistakeKind.class);
    steps.forEach(
        step -> step.mistake().ifPresent(kind -> all.merge(kind, step.regret(), Double::sum)));
    return all;
  }

  /** The step that cost most, if one cost anything. */
  public Optional<StepMark> dearest() {
    return steps.stream()
        .filter(step -> step.mistake().isPresent())
        .max(Comparator.comparingDouble(StepMark::regret));
  }

  /**
   * Whether the yard was called before anything was looked at, where the plan would have looked.
   */
  public boolean yardAtOnce() {
    for (StepMark step : steps) {
      StepDone done = step.done();
      if (done.step() instanceof HandOver || done.step() instanceof GiveUp) {
        return !(step.best() instanceof NextStep.CallYard);
      }
      if (done.step() instanceof Ask || done.step() instanceof Mend) {
        return false;
      }
    }
    return false;
  }
}
