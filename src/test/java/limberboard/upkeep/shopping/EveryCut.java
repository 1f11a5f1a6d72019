package limberboard.upkeep.shopping;

/**
 * Tries every way of spreading pieces over remnants and new lengths, without any shortcut: what the
 * planner of cuts is held against on small cases.
 */
final class EveryCut {
  private final long[] pieces;
  private final long[] remnants;
  private final long[] reels;
  private final long step;

  EveryCut(long[] pieces, long[] remnants, long[] reels, long step) {
    this.pieces = pieces;
    this.remnants = remnants;
    this.reels = reels;
    this.step = step;
  }

  /** The least that has to be bought, in the same unit; -1 when it cannot be done. */
  long least() {
    return least(0, remnants.clone(), new long[pieces.length], 0);
  }

  private long least(int i, long[] left, long[] opened, long byLength) {
    if (i == pieces.length) {
      return bought(opened, byLength);
    }
    long best = -1;
    for (int r = 0; r < left.length; r++) {
      if (left[r] >= pieces[i]) {
        left[r] -= pieces[i];
        best = better(best, least(i + 1, left, opened, byLength));
        left[r] += pieces[i];
      }
    }
    for (int n = 0; n < opened.length; n++) {
      opened[n] += pieces[i];
      best = better(best, least(i + 1, left, opened, byLength));
      opened[n] -= pieces[i];
    }
    return step > 0 ? better(best, least(i + 1, left, opened, byLength + pieces[i])) : best;
  }

  private long bought(long[] opened, long byLength) {
    long sum = step > 0 ? (byLength + step - 1) / step * step : 0;
    for (long load : opened) {
      if (load > 0) {
        long smallest = -1;
        for (long reel : reels) {
          if (reel >= load && (smallest < 0 || reel < smallest)) {
            smallest = reel;
          }
        }
        if (smallest < 0) {
          return -1;
        }
        sum += smallest;
      }
    }
    return sum;
  }

  private static long better(long one, long other) {
    if (one < 0 || other < 0) {
      return Math.max(one, other);
    }
    return Math.min(one, other);
  }
}
