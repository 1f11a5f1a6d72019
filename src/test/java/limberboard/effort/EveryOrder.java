package limberboard.effort;

import java.util.BitSet;

/** The cheapest order of mends, found by trying all of them; the yard may be called at any time. */
record EveryOrder(EffortModel model) {

  double cheapest(double[] weights, BitSet open, BitSet tried) {
    double left = 0;
    for (double weight : weights) {
      left += weight;
    }
    double best = left * model.yardMinutes();
    for (int cause = 0; cause < weights.length; cause++) {
      if (!tried.get(cause) && model.mends().get(cause).byOwner()) {
        BitSet access = model.mends().get(cause).access();
        double now =
            left * (model.mends().get(cause).minutes() + model.accessMinutes(access, open));
        double[] then = weights.clone();
        then[cause] *= 1 - model.mends().get(cause).cures();
        BitSet openThen = (BitSet) open.clone();
        openThen.or(access);
        BitSet triedThen = (BitSet) tried.clone();
        triedThen.set(cause);
        best = Math.min(best, now + cheapest(then, openThen, triedThen));
      }
    }
    return best;
  }
}
