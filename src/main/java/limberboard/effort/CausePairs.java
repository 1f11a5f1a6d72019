package limberboard.effort;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

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
  private static final int MOST_SHARES = Short.MAX_VALUE;
  private static final double TOO_LITTLE = 1e-3;

  private final List<CausePair> pairs = new ArrayList<>();
  private final Map<BitSet, Shares> byAsked = new HashMap<>();

  /**
   * Shares of weight that two causes can have.
   *
   * @param one by share, one of the causes
   * @param other by share, the other
   * @param ofOne by share, how much of it the first has, between 0 and 1
   * @param minutes by which of the two mends have failed ({@link CausePair#mends}), and by share,
   *     what it takes to tell the two apart, times their weight
   * @param orders by the mends that have failed, the shares that come to anything, those first that
   *     take the longest, and of equal ones the more even
   */
  private record Shares(
      int[] one, int[] other, double[] ofOne, double[][] minutes, Map<BitSet, short[]> orders) {
    double minutes(int share, BitSet tried) {
      return minutes[CausePair.mends(tried.get(one[share]), tried.get(other[share]))][share];
    }

    short[] order(BitSet tried) {
      short[] found = orders.get(tried);
      if (found == null) {
        found = sorted(tried);
        orders.put((BitSet) tried.clone(), found);
      }
      return found;
    }

    private short[] sorted(BitSet tried) {
      long[] keys =
          IntStream.range(0, one.length)
              .filter(share -> minutes(share, tried) > TOO_LITTLE)
              .mapToLong(share -> key(share, tried))
              .sorted()
              .toArray();
      short[] order = new short[keys.length];
      for (int i = 0; i < order.length; i++) {
        order[i] = (short) keys[i];
      }
      return order;
    }

    /** A number that is the smaller the more minutes a share has; its last bits are the share. */
    private long key(int share, BitSet tried) {
      int more = Integer.MAX_VALUE - Float.floatToIntBits((float) minutes(share, tried));
      return (long) more << Short.SIZE | share;
    }
  }

  private record Share(CausePair pair, int number, double[] minutes) {
    double ofOne() {
      return CausePair.ofOne(number);
    }

    boolean isMuch() {
      return Arrays.stream(minutes).anyMatch(each -> each > TOO_LITTLE);
    }
  }

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
   * @param tried causes whose mend has failed and is not to be tried again
   */
  double minutes(double[] weights, BitSet asked, BitSet tried) {
    double[] left = weights.clone();
    int more = 0;
    for (int cause = 0; cause < left.length; cause++) {
      left[cause] = left[cause] <= USED_UP ? 0 : left[cause];
      more += left[cause] > 0 ? 1 : 0;
    }
    Shares shares = shares(asked);
    short[] order = shares.order(tried);
    double sum = 0;
    for (int i = 0; more > 1 && i < order.length; i++) {
      int one = shares.one[order[i]];
      int other = shares.other[order[i]];
      if (left[one] > 0 && left[other] > 0) {
        double ofOne = shares.ofOne[order[i]];
        double share = Math.min(left[one] / ofOne, left[other] / (1 - ofOne));
        sum += share * shares.minutes(order[i], tried);
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
      found = worked(asked);
      byAsked.put((BitSet) asked.clone(), found);
    }
    return found;
  }

  private Shares worked(BitSet asked) {
    List<Share> all = new ArrayList<>();
    for (CausePair pair : pairs) {
      for (int number = 0; number < CausePair.SHARES; number++) {
        Share share = new Share(pair, number, pair.minutes(number, asked));
        if (share.isMuch() && all.size() < MOST_SHARES) {
          all.add(share);
        }
      }
    }
    all.sort(Comparator.comparingDouble(share -> Math.abs(share.ofOne() - EVEN)));
    return new Shares(
        all.stream().mapToInt(share -> share.pair.one()).toArray(),
        all.stream().mapToInt(share -> share.pair.other()).toArray(),
        all.stream().mapToDouble(Share::ofOne).toArray(),
        IntStream.range(0, CausePair.MENDS)
            .mapToObj(mends -> all.stream().mapToDouble(share -> share.minutes[mends]).toArray())
            .toArray(double[][]::new),
        new HashMap<>());
  }
}
