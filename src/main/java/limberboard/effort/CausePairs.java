package limberboard.effort;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Minutes that no strategy can save because it does not know which cause it is, on top of what each
 * would cost if it were known: a stronger bound than the first step alone, and dearer to find.
 *
 * <p>The best strategy's minutes are a concave function of the causes' weights, and twice the
 * weights cost twice as much. So the whole costs at least what its parts cost, each by a strategy
 * of its own. Here the weights are shared out among pairs of causes ({@link CausePair}), those
 * first that take the longest to tell apart. What is left over adds nothing.
 *
 * <p>Keeps what it has worked out: one object belongs to one thread.
 */
final class CausePairs {
  private static final double USED_UP = 1e-9;
  private static final double EVEN = 0.5;

  private final List<CausePair> pairs = new ArrayList<>();
  private final Map<BitSet, Shares> byAsked = new HashMap<>();

  /**
   * Shares of weight that two causes can have, those that take the longest first.
   *
   * @param one by share, one of the causes
   * @param other by share, the other
   * @param ofOne by share, how much of it the first has, between 0 and 1
   * @param minutes by share, what it takes to tell the two apart, times their weight
   */
  private record Shares(int[] one, int[] other, double[] ofOne, double[] minutes) {}

  private record Share(CausePair pair, double ofOne, double minutes) {}

  /**
   * Works out what every two causes take.
   *
   * @param model what everything costs
   * @param known by cause, what it costs when it is known to be the one and nothing is open
   */
  CausePairs(EffortModel model, double[] known) {
    for (int one = 0; one < known.length; one++) {
      for (int other = one + 1; other < known.length; other++) {
        pairs.add(new CausePair(model, known, one, other));
      }
    }
  }

  /**
   * The minutes on top of what the causes cost when they are known.
   *
   * @param weights a weight for each cause; the result is multiplied by their sum
   * @param asked checks that are not to be made again
   * @param tried causes whose mend is not to be tried again; what telling these apart from others
   *     takes is not counted
   */
  double minutes(double[] weights, BitSet asked, BitSet tried) {
    double[] left = weights.clone();
    int more = 0;
    for (int cause = 0; cause < left.length; cause++) {
      left[cause] = tried.get(cause) || left[cause] <= USED_UP ? 0 : left[cause];
      more += left[cause] > 0 ? 1 : 0;
    }
    Shares shares = shares(asked);
    double sum = 0;
    for (int i = 0; more > 1 && i < shares.minutes.length; i++) {
      int one = shares.one[i];
      int other = shares.other[i];
      double ofOne = shares.ofOne[i];
      double share = Math.min(left[one] / ofOne, left[other] / (1 - ofOne));
      if (share > 0) {
        sum += share * shares.minutes[i];
        more -= taken(left, one, share * ofOne) + taken(left, other, share * (1 - ofOne));
      }
    }
    return sum;
  }

  /** Takes away from what is left of a cause; 1 when nothing is left of it then, else 0. */
  private static int taken(double[] left, int cause, double weight) {
    left[cause] -= weight;
    if (left[cause] > USED_UP) {
      return 0;
    }
    left[cause] = 0;
    return 1;
  }

  private Shares shares(BitSet asked) {
    Shares found = byAsked.get(asked);
    if (found == null) {
      found = sorted(asked);
      byAsked.put((BitSet) asked.clone(), found);
    }
    return found;
  }

  private Shares sorted(BitSet asked) {
    List<Share> all = new ArrayList<>();
    for (CausePair pair : pairs) {
      for (int share = 0; share < CausePair.SHARES; share++) {
        double minutes = pair.minutes(share, asked);
        if (minutes > 0) {
          all.add(new Share(pair, CausePair.ofOne(share), minutes));
        }
      }
    }
    all.sort(
        Comparator.comparingDouble(Share::minutes)
            .reversed()
            .thenComparingDouble(share -> Math.abs(share.ofOne - EVEN)));
    return new Shares(
        all.stream().mapToInt(share -> share.pair.one()).toArray(),
        all.stream().mapToInt(share -> share.pair.other()).toArray(),
        all.stream().mapToDouble(Share::ofOne).toArray(),
        all.stream().mapToDouble(Share::minutes).toArray());
  }
}
