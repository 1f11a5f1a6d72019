package limberboard.upkeep.list;

import java.util.BitSet;
import java.util.List;

/**
 * The work of one part as numbers: where it is, how long it takes, what must be open, what comes
 * before it. Not changed once made.
 *
 * @param places index of each job's zone on the walk; {@link #ANYWHERE} for work without a place
 * @param minutes minutes of each job, at least 0
 * @param access for each job the numbers of everything that must be open
 * @param earlier for each job the jobs that come before it; runs in no circle
 */
record Jobs(int[] places, int[] minutes, List<BitSet> access, List<BitSet> earlier) {
  /** The place of work that can be done wherever one stands. */
  static final int ANYWHERE = -1;

  Jobs {
    access = List.copyOf(access);
    earlier = List.copyOf(earlier);
  }

  int size() {
    return places.length;
  }

  /** Accesses that have been opened, and are still needed, once these jobs are done. */
  BitSet open(BitSet done) {
    BitSet begun = new BitSet();
    BitSet wanted = new BitSet();
    for (int job = 0; job < size(); job++) {
      (done.get(job) ? begun : wanted).or(access.get(job));
    }
    begun.and(wanted);
    return begun;
  }

  /** Whether everything that comes before a job is done. */
  boolean isFree(int job, BitSet done) {
    return !done.get(job) && without(earlier.get(job), done).isEmpty();
  }

  /** Whether all that a job needs is open. */
  boolean isReached(int job, BitSet open) {
    return without(access.get(job), open).isEmpty();
  }

  /** Minutes for which accesses that a job does not need stand open while it is done. */
  long idle(int job, BitSet open) {
    return (long) minutes[job] * without(open, access.get(job)).cardinality();
  }

  /** The length of the walk to a job; work without a place is done where one stands. */
  int walk(int from, int job) {
    return places[job] == ANYWHERE ? 0 : Math.abs(places[job] - from);
  }

  /** Where one stands after a job. */
  int after(int from, int job) {
    return places[job] == ANYWHERE ? from : places[job];
  }

  /** What the walk to all jobs that are left takes at least: to the nearer end, then over all. */
  int leastWalk(int from, BitSet done) {
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (int job = 0; job < size(); job++) {
      if (!done.get(job) && places[job] != ANYWHERE) {
        low = Math.min(low, places[job]);
        high = Math.max(high, places[job]);
      }
    }
    return low > high ? 0 : high - low + Math.min(Math.abs(from - low), Math.abs(from - high));
  }

  private static BitSet without(BitSet these, BitSet those) {
    BitSet rest = (BitSet) these.clone();
    rest.andNot(those);
    return rest;
  }
}
