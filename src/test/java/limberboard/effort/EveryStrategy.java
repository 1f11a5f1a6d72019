package limberboard.effort;

import java.util.BitSet;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;

/**
 * The cheapest strategy, found by trying every check, every mend and the yard at every turn: no
 * bounds, nothing remembered, and nothing in common with {@link Search} but the model.
 */
record EveryStrategy(EffortModel model) {

  double cheapest(Situation now) {
    return cheapest(now.chances(), now.open(), now.asked(), now.tried());
  }

  /** The weights are left as they fall, so that each sum is the chance of getting there. */
  private double cheapest(double[] weights, BitSet open, BitSet asked, BitSet tried) {
    if (sum(weights) == 0) {
      return 0;
    }
    for (int check = 0; check < model.checks().size(); check++) {
      if (model.checks().get(check).comesFirst() && !asked.get(check)) {
        return checking(check, weights, open, asked, tried);
      }
    }
    double best = yard(weights);
    for (int cause = 0; cause < weights.length; cause++) {
      if (model.mends().get(cause).byOwner() && !tried.get(cause)) {
        best = Math.min(best, mending(cause, weights, open, asked, tried));
      }
    }
    for (int check = 0; check < model.checks().size(); check++) {
      if (!asked.get(check)) {
        best = Math.min(best, checking(check, weights, open, asked, tried));
      }
    }
    return best;
  }

  private double yard(double[] weights) {
    double best = sum(weights) * (model.yardMinutes() + model.searchMinutes());
    for (int named = 0; named < weights.length; named++) {
      if (model.mends().get(named).canBeNamed()) {
        double searched = sum(weights) - weights[named];
        best =
            Math.min(best, sum(weights) * model.yardMinutes() + searched * model.searchMinutes());
      }
    }
    return best;
  }

  private double mending(int cause, double[] weights, BitSet open, BitSet asked, BitSet tried) {
    MendEffort mend = model.mends().get(cause);
    double minutes = mend.minutes() + model.accessMinutes(mend.access(), open);
    double[] then = weights.clone();
    then[cause] -= weights[cause] * mend.cures();
    BitSet openThen = mend.shownAtOnce() ? union(open, mend.access()) : new BitSet();
    return sum(weights) * minutes + cheapest(then, openThen, asked, with(tried, cause));
  }

  private double checking(int check, double[] weights, BitSet open, BitSet asked, BitSet tried) {
    CheckEffort effort = model.checks().get(check);
    BitSet openThen = union(open, effort.access());
    BitSet askedThen = with(asked, check);
    double total =
        sum(weights) * (effort.minutes() + model.accessMinutes(effort.access(), open))
            + cheapest(scaled(weights, effort.cantTell()), openThen, askedThen, tried);
    for (int answer = 0; answer < model.answers().answers(check); answer++) {
      double[] then = scaled(weights, 1 - effort.cantTell());
      for (int cause = 0; cause < then.length; cause++) {
        then[cause] *= model.answers().likelihood(check, answer, cause);
      }
      total += cheapest(then, openThen, askedThen, tried);
    }
    return total;
  }

  private static double sum(double[] weights) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    return sum;
  }

  private static double[] scaled(double[] weights, double by) {
    double[] scaled = weights.clone();
    for (int cause = 0; cause < scaled.length; cause++) {
      scaled[cause] *= by;
    }
    return scaled;
  }

  private static BitSet union(BitSet one, BitSet other) {
    BitSet both = (BitSet) one.clone();
    both.or(other);
    return both;
  }

  private static BitSet with(BitSet set, int number) {
    BitSet more = (BitSet) set.clone();
    more.set(number);
    return more;
  }
}
