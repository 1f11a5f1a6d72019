package limberboard.effort;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.effort.EffortModel.MendEffort;

/**
 * Minutes that no strategy can go below on average, from some moment on: what it would cost if the
 * cause were known, and on top of that what the first step costs when it is not.
 *
 * <p>Known causes: each costs its own mend with what must still be opened for it, and the yard
 * where the mend fails, or the yard at once. What another cause has opened is not counted on,
 * because only one cause is there. The first step: whatever is done first, a mend is in vain under
 * every cause but its own, a check costs its minutes under all of them, and the yard has to search
 * unless it is told the right cause. The cheapest of these comes on top; or, where that is more and
 * the work for it is worth while, what it takes to tell causes apart ({@link CausePairs}). All of
 * this follows from the expected minutes of a strategy being linear in the chances of the causes,
 * so that the best strategy's are at least the sum of the best for each part of them.
 *
 * <p>Keeps what it has worked out about access: one object belongs to one thread.
 */
final class LowerBound {
  private final EffortModel model;
  private final Map<BitSet, Costs> known = new HashMap<>();
  private final double[] mendMinutes;
  private final double[] handedOver;
  private final int[] checksByMinutes;
  private final double[] checkMinutes;
  private final Optional<CausePairs> apart;

  /**
   * What everything costs while the same access is open.
   *
   * @param number counts the sets of access that were met
   * @param open what is open
   * @param mends by cause, its mend with access
   * @param checks by check, with access
   * @param known by cause, what it costs on average when it is known to be the one
   */
  record Costs(int number, BitSet open, double[] mends, double[] checks, double[] known) {}

  /** The bound by the first step alone: quick to find. */
  LowerBound(EffortModel model) {
    this(model, false);
  }

  /** The bound by what it takes to tell causes apart, too: worth its work in a long search. */
  static LowerBound thorough(EffortModel model) {
    return new LowerBound(model, true);
  }

  private LowerBound(EffortModel model, boolean isThorough) {
    int causes = model.mends().size();
    this.model = model;
    this.mendMinutes = new double[causes];
    this.handedOver = new double[causes];
    for (int cause = 0; cause < causes; cause++) {
      MendEffort mend = model.mends().get(cause);
      mendMinutes[cause] = mend.canCure() ? mend.minutes() : -1;
      handedOver[cause] = model.handOver(cause);
    }
    this.checkMinutes = model.checks().stream().mapToDouble(c -> c.minutes()).toArray();
    this.checksByMinutes =
        IntStream.range(0, checkMinutes.length)
            .boxed()
            .sorted((a, b) -> Double.compare(checkMinutes[a], checkMinutes[b]))
            .mapToInt(Integer::intValue)
            .toArray();
    this.apart =
        isThorough
            ? Optional.of(new CausePairs(model, costs(new BitSet()).known()))
            : Optional.empty();
  }

  /** What everything costs with this access open; the same object for the same access. */
  Costs costs(BitSet open) {
    Costs found = known.get(open);
    if (found == null) {
      found = worked((BitSet) open.clone());
      known.put(found.open(), found);
    }
    return found;
  }

  private Costs worked(BitSet open) {
    double[] mends = new double[handedOver.length];
    double[] alone = new double[handedOver.length];
    for (int cause = 0; cause < mends.length; cause++) {
      MendEffort mend = model.mends().get(cause);
      mends[cause] = model.mendMinutes(cause, open);
      double mended = mends[cause] + (1 - mend.cures()) * handedOver[cause];
      alone[cause] = mend.byOwner() ? Math.min(mended, handedOver[cause]) : handedOver[cause];
    }
    double[] checks = new double[checkMinutes.length];
    for (int check = 0; check < checks.length; check++) {
      checks[check] = model.checkMinutes(check, open);
    }
    return new Costs(known.size(), open, mends, checks, alone);
  }

  /**
   * What it would cost if the cause were known; a first step comes on top, whichever it is, with
   * its minutes without access.
   *
   * @param weights a weight for each cause; the result is multiplied by their sum
   * @param costs what everything costs now
   * @param tried causes whose mend is not to be tried again
   */
  double ifKnown(double[] weights, Costs costs, BitSet tried) {
    double known = 0;
    for (int cause = 0; cause < weights.length; cause++) {
      known += weights[cause] * (tried.get(cause) ? handedOver[cause] : costs.known()[cause]);
    }
    return known;
  }

  /**
   * The bound.
   *
   * @param weights a weight for each cause; the result is multiplied by their sum
   * @param costs what everything costs now
   * @param asked checks that are not to be made again
   * @param tried causes whose mend is not to be tried again
   */
  double minutes(double[] weights, Costs costs, BitSet asked, BitSet tried) {
    double sum = 0;
    for (double weight : weights) {
      sum += weight;
    }
    double known = ifKnown(weights, costs, tried);
    double first = model.handOver(weights) - known;
    for (int cause = 0; cause < weights.length; cause++) {
      if (mendMinutes[cause] >= 0 && !tried.get(cause)) {
        first = Math.min(first, (sum - weights[cause]) * mendMinutes[cause]);
      }
    }
    int cheapest = 0;
    while (cheapest < checksByMinutes.length && asked.get(checksByMinutes[cheapest])) {
      cheapest++;
    }
    if (cheapest < checksByMinutes.length) {
      first = Math.min(first, sum * checkMinutes[checksByMinutes[cheapest]]);
    }
    if (apart.isPresent()) {
      first = Math.max(first, apart.get().minutes(weights, asked, tried));
    }
    return known + Math.max(0, first);
  }
}
