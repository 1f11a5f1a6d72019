package limberboard.trace;

import java.util.List;
import java.util.Optional;
import limberboard.effort.Advice;
import limberboard.effort.Advice.Option;
import limberboard.effort.Situation;

/**
 * What can be done next. What safety demands comes before anything else until it is passed.
 *
 * @param fault the fault
 * @param trail what has been done
 * @param situation where that leads, as numbers
 * @param advice what can be done, as numbers
 */
record NextSteps(Fault fault, Trail trail, Situation situation, Lazy<Advice> advice) {

  /** The step that is proposed. */
  NextStep next() {
    Optional<FaultCheck> unsafe = trail.unsafe(fault);
    return unsafe
        .filter(trail::isDone)
        .map(Reasons::makeSafe)
        .orElseGet(() -> reasons().step(advice.get().best()));
  }

  /** Everything that can be done, the best first; only what safety demands until it is passed. */
  List<Alternative> all() {
    Option best = advice.get().best();
    if (trail.unsafe(fault).isPresent()) {
      return List.of(new Alternative(next(), best.expectedMinutes()));
    }
    Reasons reasons = reasons();
    return advice.get().options().stream()
        .map(
            option ->
                new Alternative(
                    option.equals(best) ? reasons.step(option) : reasons.instead(option, best),
                    option.expectedMinutes()))
        .toList();
  }

  private Reasons reasons() {
    return new Reasons(fault, situation.chances(), trail.opened(fault));
  }
}
