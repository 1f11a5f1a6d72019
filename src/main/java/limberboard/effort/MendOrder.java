package limberboard.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import limberboard.effort.EffortModel.MendEffort;

/**
 * What it takes on average to mend the fault without any further check: mends in the order of their
 * chance of cure per minute, the largest first, and the yard as soon as calling it costs less than
 * going on.
 *
 * <p>With one fault and no access to share, this order is the best there is (J. B. Kadane and H. A.
 * Simon, <i>Optimal strategies for a class of constrained sequential problems</i>, Annals of
 * Statistics 5(2), 1977). Mends behind the same access are taken together: of each group the first
 * few whose chance per minute, access included, is the largest, which is the best order as long as
 * no two groups share an access (W. A. Horn, SIAM Journal on Applied Mathematics 23(2), 1972, for
 * jobs that form trees), and a good one otherwise.
 *
 * <p>Working space is kept between calls: one object belongs to one thread.
 */
final class MendOrder {
  private static final BitSet NOTHING = new BitSet();

  private final EffortModel model;
  private final double mostYard;
  private final double[] leftOver;
  private final double[] cures;
  private final double[] minutes;
  private final Descending descending;
  private final int[] ranked;
  private final double[] gain;
  private final double[] ratio;
  private final boolean[] done;
  private final int[] order;
  private final AccessGroups groups;
  private int count;
  private int length;
  private int bestLength;
  private double spent;
  private double left;
  private double best;

  MendOrder(EffortModel model) {
    int causes = model.mends().size();
    this.model = model;
    this.mostYard = model.yardMinutes() + model.searchMinutes();
    this.leftOver = new double[causes];
    this.cures = new double[causes];
    this.minutes = new double[causes];
    for (int cause = 0; cause < causes; cause++) {
      MendEffort mend = model.mends().get(cause);
      cures[cause] = mend.byOwner() ? mend.cures() : 0;
      minutes[cause] = mend.minutes();
    }
    this.descending = new Descending(causes);
    this.ranked = new int[causes];
    this.gain = new double[causes];
    this.ratio = new double[causes];
    this.done = new boolean[causes];
    this.order = new int[causes];
    this.groups = new AccessGroups(model);
  }

  /**
   * The expected minutes until the fault is mended or handed over.
   *
   * @param weights a weight for each cause; the result is multiplied by their sum, so that for
   *     chances it is the expectation itself
   * @param open access already open
   * @param tried causes whose mend is not to be tried again
   */
  double minutes(double[] weights, BitSet open, BitSet tried) {
    rank(weights, tried);
    spent = 0;
    length = 0;
    bestLength = 0;
    best = model.handOver(weights);
    groups.begin(open);
    groups.findBlocks(ranked, count, done, gain, minutes);
    int at = 0;
    while (spent < best) {
      at = nextOpen(at);
      int group = groups.bestBlock();
      boolean anyOpen = at < count;
      if (!anyOpen && group < 0) {
        break;
      }
      if (group < 0 || (anyOpen && ratio[ranked[at]] >= groups.blockRatio(group))) {
        if (!mend(at, weights)) {
          groups.findBlocks(ranked, count, done, gain, minutes);
          at = 0;
        }
      } else {
        mendBlock(group, weights);
        at = 0;
      }
    }
    return best;
  }

  /** The mends worth trying before the yard is called, in order, as of the last call. */
  List<Integer> order() {
    List<Integer> mends = new ArrayList<>(bestLength);
    for (int i = 0; i < bestLength; i++) {
      mends.add(order[i]);
    }
    return mends;
  }

  /**
   * Ranks the mends that can pay at all. One that does not pay even as the very last one before the
   * yard, when the least is left, is never worth its minutes.
   */
  private void rank(double[] weights, BitSet tried) {
    left = 0;
    double curable = 0;
    for (int cause = 0; cause < cures.length; cause++) {
      gain[cause] = tried.get(cause) ? 0 : weights[cause] * cures[cause];
      left += weights[cause];
      curable += gain[cause];
    }
    double least = Math.max(0, left - curable);
    count = 0;
    for (int cause = 0; cause < cures.length; cause++) {
      if (gain[cause] > 0 && gain[cause] * mostYard > least * minutes[cause]) {
        ratio[cause] = gain[cause] / minutes[cause];
        ranked[count++] = cause;
      }
    }
    descending.sort(ranked, count, ratio);
    Arrays.fill(done, 0, count, false);
  }

  private int nextOpen(int from) {
    int at = from;
    while (at < count && (done[at] || !groups.isOpen(model.mendAccessOf(ranked[at])))) {
      at++;
    }
    return at;
  }

  private void mendBlock(int group, double[] weights) {
    int last = groups.blockEnd(group);
    for (int at = 0; at <= last; at++) {
      if (!done[at] && model.mendAccessOf(ranked[at]) == group) {
        mend(at, weights);
      }
    }
    groups.findBlocks(ranked, count, done, gain, minutes);
  }

  /** Mends, with what still has to be opened for it; whether things stay open afterwards. */
  private boolean mend(int at, double[] weights) {
    int cause = ranked[at];
    int group = model.mendAccessOf(cause);
    done[at] = true;
    spent += (minutes[cause] + groups.minutes(group)) * left;
    left = Math.max(0, left - gain[cause]);
    order[length++] = cause;
    if (spent + left * model.yardMinutes() < best) {
      double withYardNext = spent + handOver(weights);
      if (withYardNext < best) {
        best = withYardNext;
        bestLength = length;
      }
    }
    boolean shown = model.mends().get(cause).shownAtOnce();
    if (!shown) {
      groups.begin(NOTHING);
    } else if (!groups.isOpen(group)) {
      groups.open(group);
    }
    return shown;
  }

  /** What the yard costs after the mends made so far. */
  private double handOver(double[] weights) {
    if (model.searchMinutes() == 0) {
      return left * model.yardMinutes();
    }
    System.arraycopy(weights, 0, leftOver, 0, weights.length);
    for (int i = 0; i < length; i++) {
      leftOver[order[i]] -= gain[order[i]];
    }
    return model.handOver(leftOver);
  }
}
