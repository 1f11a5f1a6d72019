package limberboard.effort;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Mends grouped by the access they need, with what each group still costs to open and, for groups
 * that are not open, the first few mends whose chance of cure per minute is the largest when the
 * access is counted with them.
 *
 * <p>Working space is kept between calls: one object belongs to one thread.
 */
final class AccessGroups {
  private final EffortModel model;
  private final List<BitSet> access;
  private final BitSet open = new BitSet();
  private final double[] minutes;
  private final double[] sumGain;
  private final double[] sumMinutes;
  private final double[] blockRatio;
  private final int[] blockEnd;

  AccessGroups(EffortModel model) {
    this.model = model;
    this.access = model.mendAccess();
    this.minutes = new double[access.size()];
    this.sumGain = new double[access.size()];
    this.sumMinutes = new double[access.size()];
    this.blockRatio = new double[access.size()];
    this.blockEnd = new int[access.size()];
  }

  /** Starts anew with what is open. */
  void begin(BitSet nowOpen) {
    open.clear();
    open.or(nowOpen);
    price();
  }

  /** Opens what a group needs. */
  void open(int group) {
    open.or(access.get(group));
    price();
  }

  private void price() {
    for (int group = 0; group < minutes.length; group++) {
      minutes[group] = model.accessMinutes(access.get(group), open);
    }
  }

  /** What opening a group costs now. */
  double minutes(int group) {
    return minutes[group];
  }

  /** Whether a group costs nothing more to open. */
  boolean isOpen(int group) {
    return minutes[group] == 0;
  }

  /**
   * Finds for each group that is not open its best first few mends.
   *
   * @param ranked mends by falling chance per minute
   * @param count how many of them count
   * @param done by rank, whether a mend is done
   * @param gain by mend, its chance of cure
   * @param cost by mend, its minutes without access
   */
  void findBlocks(int[] ranked, int count, boolean[] done, double[] gain, double[] cost) {
    Arrays.fill(sumGain, 0);
    Arrays.fill(blockRatio, -1);
    System.arraycopy(minutes, 0, sumMinutes, 0, minutes.length);
    for (int at = 0; at < count; at++) {
      int group = model.mendAccessOf(ranked[at]);
      if (!done[at] && minutes[group] > 0) {
        sumGain[group] += gain[ranked[at]];
        sumMinutes[group] += cost[ranked[at]];
        double ratio = sumGain[group] / sumMinutes[group];
        if (ratio > blockRatio[group]) {
          blockRatio[group] = ratio;
          blockEnd[group] = at;
        }
      }
    }
  }

  /** The group whose first few mends have the largest chance per minute; −1 when there is none. */
  int bestBlock() {
    int best = -1;
    for (int group = 0; group < blockRatio.length; group++) {
      if (blockRatio[group] >= 0 && (best < 0 || blockRatio[group] > blockRatio[best])) {
        best = group;
      }
    }
    return best;
  }

  /** The chance of cure per minute of a group's first few mends. */
  double blockRatio(int group) {
    return blockRatio[group];
  }

  /** The rank of the last of a group's first few mends. */
  int blockEnd(int group) {
    return blockEnd[group];
  }
}
