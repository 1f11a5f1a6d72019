package limberboard.effort;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.MendEffort;

/**
 * Tries one mend after another as they stand in the file, without any check that safety does not
 * demand, and calls the yard where going on down the list would cost more. A rule to measure a
 * {@link Planner} by, not to use.
 */
public final class FileOrder implements Policy {
  /** Makes the policy. */
  public FileOrder() {}

  @Override
  public Advice advise(EffortModel model, Situation now) {
    Option option = SafetyFirst.option(model, now).orElseGet(() -> next(model, now));
    return new Advice(List.of(option), 0);
  }

  private static Option next(EffortModel model, Situation now) {
    int first = -1;
    double yard = model.handOver(now.chances());
    double best = yard;
    double spent = 0;
    double left = 1;
    double[] weights = now.chances();
    BitSet open = now.open();
    for (int cause = 0; cause < weights.length; cause++) {
      MendEffort mend = model.mends().get(cause);
      if (mend.byOwner() && !now.tried().get(cause)) {
        first = first < 0 ? cause : first;
        spent += left * model.mendMinutes(cause, open);
        left -= weights[cause] * mend.cures();
        weights[cause] *= 1 - mend.cures();
        open = model.openAfterMend(cause, open);
        best = Math.min(best, spent + model.handOver(weights));
      }
    }
    if (first < 0 || best >= yard) {
      return new Option(Action.YARD, 0, yard, yard, Grounds.EFFORT);
    }
    double cost = model.mendMinutes(first, now.open());
    return new Option(Action.MEND, first, cost, best, Grounds.EFFORT);
  }
}
