package limberboard.upkeep.shopping;

import java.util.Arrays;

/**
 * Lengths that a rope is sold in.
 *
 * @param reels lengths of whole reels, the shortest first
 * @param step what it is sold in when it is cut to length, or 0 when it is not
 */
record LengthsForSale(long[] reels, long step) {
  /** Stands for what is cut to length, where a reel's number is asked for. */
  static final int BY_LENGTH = -1;

  LengthsForSale {
    reels = reels.clone();
    Arrays.sort(reels);
  }

  /** The longest reel, or 0. */
  long longest() {
    return reels.length == 0 ? 0 : reels[reels.length - 1];
  }

  /** The shortest reel that holds so much. */
  long reel(long load) {
    for (long reel : reels) {
      if (reel >= load) {
        return load == 0 ? 0 : reel;
      }
    }
    return longest();
  }

  /** What is bought to length for so much. */
  long byLength(long load) {
    return step == 0 ? 0 : (load + step - 1) / step * step;
  }
}
