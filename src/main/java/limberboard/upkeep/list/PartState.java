package limberboard.upkeep.list;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Where one stands in a part: what is done, in which place, and what it has cost so far.
 *
 * @param done jobs done
 * @param at index of the zone
 * @param idle minutes for which accesses stood open unused
 * @param walk zones walked
 * @param least idle and walk at least, whatever follows
 * @param lately the jobs done since the stand before
 * @param before the stand before; empty at the beginning
 */
record PartState(
    BitSet done,
    int at,
    long idle,
    long walk,
    Cost least,
    List<Integer> lately,
    Optional<PartState> before) {

  /** The same work done and the same place: only the cheaper is worth going on from. */
  record Key(BitSet done, int at) {}

  /** At the first zone, with nothing done. */
  static PartState beginning(Jobs jobs) {
    BitSet nothing = new BitSet();
    Cost least = new Cost(0, jobs.leastWalk(0, nothing));
    return new PartState(nothing, 0, 0, 0, least, List.of(), Optional.empty());
  }

  Key key() {
    return new Key(done, at);
  }

  /**
   * Does a job, and then all free work in the same place that needs nothing more opened and leaves
   * nothing open unused. To do that work later can make nothing cheaper.
   */
  PartState go(int job, Jobs jobs) {
    BitSet now = (BitSet) done.clone();
    List<Integer> visit = new ArrayList<>();
    long cost = idle + jobs.idle(job, jobs.open(now));
    int place = jobs.after(at, job);
    long walked = walk + jobs.walk(at, job);
    now.set(job);
    visit.add(job);
    for (int next = besides(place, now, jobs); next >= 0; next = besides(place, now, jobs)) {
      now.set(next);
      visit.add(next);
    }
    Cost least = new Cost(cost, walked + jobs.leastWalk(place, now));
    return new PartState(now, place, cost, walked, least, List.copyOf(visit), Optional.of(this));
  }

  private static int besides(int place, BitSet now, Jobs jobs) {
    BitSet open = jobs.open(now);
    for (int job = now.nextClearBit(0); job < jobs.size(); job = now.nextClearBit(job + 1)) {
      if (jobs.walk(place, job) == 0
          && jobs.isFree(job, now)
          && jobs.isReached(job, open)
          && jobs.idle(job, open) == 0) {
        return job;
      }
    }
    return -1;
  }

  /** All jobs done so far, in order. */
  int[] inOrder() {
    int[] order = new int[done.cardinality()];
    int end = order.length;
    Optional<PartState> stand = Optional.of(this);
    while (stand.isPresent()) {
      List<Integer> visit = stand.get().lately();
      end -= visit.size();
      for (int i = 0; i < visit.size(); i++) {
        order[end + i] = visit.get(i);
      }
      stand = stand.get().before();
    }
    return order;
  }

  /**
   * What an order costs: first idle minutes, then walk.
   *
   * @param idle minutes for which accesses stand open unused
   * @param walk zones walked
   */
  record Cost(long idle, long walk) implements Comparable<Cost> {
    @Override
    public int compareTo(Cost other) {
      int byIdle = Long.compare(idle, other.idle);
      return byIdle == 0 ? Long.compare(walk, other.walk) : byIdle;
    }
  }
}
