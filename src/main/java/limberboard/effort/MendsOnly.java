package limberboard.effort;

import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;

/**
 * Makes no check that safety does not demand: mends in the order of their chance of cure per
 * minute, with access taken in blocks, and the yard when that is cheaper. What the others are
 * measured by.
 */
public final class MendsOnly implements Policy {
  /** Makes the policy. */
  public MendsOnly() {}

  @Override
  public Advice advise(EffortModel model, Situation now) {
    return SafetyFirst.option(model, now)
        .map(option -> new Advice(List.of(option), 0))
        .orElseGet(() -> new Advice(List.of(next(model, now)), 0));
  }

  /** The first mend of the best order without checks, or the yard. */
  static Option next(EffortModel model, Situation now) {
    MendOrder order = new MendOrder(model);
    double minutes = order.minutes(now.chances(), now.open(), now.tried());
    if (order.order().isEmpty()) {
      return new Option(Action.YARD, 0, minutes, minutes, Grounds.EFFORT);
    }
    int cause = order.order().get(0);
    double cost = model.mendMinutes(cause, now.open());
    return new Option(Action.MEND, cause, cost, minutes, Grounds.EFFORT);
  }
}
