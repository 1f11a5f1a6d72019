package limberboard.effort;

import java.util.Optional;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;

/** The checks that safety demands before anything else, which every policy has to make. */
final class SafetyFirst {
  private SafetyFirst() {}

  /** The first such check that has not been made; its expected minutes are not worked out. */
  static Optional<Option> option(EffortModel model, Situation now) {
    int check = model.demanded(now.asked());
    return check < 0 ? Optional.empty() : Optional.of(check(model, now, check, Grounds.SAFETY));
  }

  /** A check as an option whose expected minutes are not worked out. */
  static Option check(EffortModel model, Situation now, int check, Grounds grounds) {
    double cost = model.checkMinutes(check, now.open());
    return new Option(Action.CHECK, check, cost, Double.NaN, grounds);
  }
}
