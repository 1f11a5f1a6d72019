package limberboard.effort;

import java.util.BitSet;
import limberboard.effort.EffortModel.MendEffort;

/** The cheapest order of mends, found by trying all of them; the yard may be called at any time. */
record EveryOrder(EffortModel model) {

  double cheapest(double[] weights, BitSet open, BitSet tried) {
    double left = 0;
    double named = 0;
    for (int cause = 0; cause < weights.length; cause++) {
      left += weights[cause];
      named = model.mends().get(cause).canBeNamed() ? Math.max(named, weights[cause]) : named;
    }
    double best = left * model.yardMinutes() + (left - named) * model.searchMinutes();
    for (int cause = 0; cause < weights.length; cause++) {
      MendEffort mend = model.mends().get(cause);
      if (!tried.get(cause) && mend.byOwner()) {
        double now = left * (mend.minutes() + model.accessMinutes(mend.access(), open));
        double[] then = weights.clone();
        then[cause] *= 1 - mend.cures();
        BitSet openThen = new BitSet();
        if (mend.shownAtOnce()) {
          openThen.or(open);
          openThen.or(mend.access());
        }
        BitSet triedThen = (BitSet) tried.clone();
        triedThen.set(cause);
        best = Math.min(best, now + cheapest(then, openThen, triedThen));
      }
    }
    return best;
  }
}
