package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * How much can be worth at most what is done in the time there is, each access being opened once.
 * The time is given a price, and with each price the set of greatest profit is one minimum cut; the
 * price at which the bound is lowest is found by laying lines between the sets. This is as sharp as
 * the linear programme, since the sets without the limit of time are the corners of its region. A
 * bound may count some of the days only: then what can be done on the others costs nothing. For one
 * thread.
 */
final class WorthBound {
  private static final long MOST = 1L << 60;
  private static final int ALL = 100;
  private static final long FINEST = 1L << 20;
  private static final int ROUNDS = 60;
  private static final int MOST_BOUNDS = 12;

  private final Requirements graph;
  private final int[][] requires;
  private final int chores;
  private final int[] minutes;
  private final ClosureFlow flow;
  private final long time;
  private final long fine;

  /**
   * A bound.
   *
   * @param first the first day that is counted
   * @param last the last day that is counted
   */
  WorthBound(Chores chores, Requirements graph, int first, int last) {
    this.graph = graph;
    this.chores = chores.size();
    this.requires = new int[graph.nodes()][];
    this.minutes = new int[graph.nodes()];
    for (int node = 0; node < requires.length; node++) {
      boolean counted =
          node >= this.chores
              || chores.chore(node).firstDay() >= first && chores.chore(node).lastDay() <= last;
      minutes[node] = counted ? graph.minutes(node) : 0;
      requires[node] =
          counted
              ? graph.direct()[node]
              : Arrays.stream(graph.direct()[node]).filter(each -> each < this.chores).toArray();
    }
    this.flow = new ClosureFlow(requires);
    this.time = chores.days().subList(first, last + 1).stream().mapToLong(Integer::longValue).sum();
    long allWorth = 1;
    long allMinutes = 1;
    for (int node = 0; node < minutes.length; node++) {
      allWorth += graph.worth(node);
      allMinutes += minutes[node];
    }
    this.fine = Math.max(1, Math.min(FINEST, MOST / allWorth / allMinutes));
  }

  /**
   * The bounds that may be worth asking: that over all days, and those over the first days or the
   * last days alone, where there are chores that can be done on no others.
   */
  static List<WorthBound> all(Chores chores, Requirements graph) {
    int end = chores.days().size() - 1;
    List<WorthBound> bounds = new ArrayList<>();
    bounds.add(new WorthBound(chores, graph, 0, end));
    SortedSet<Integer> firsts = new TreeSet<>();
    SortedSet<Integer> lasts = new TreeSet<>();
    for (Chore chore : chores.chores()) {
      if (chore.firstDay() <= chore.lastDay() && chore.lastDay() <= end) {
        firsts.add(chore.firstDay());
        lasts.add(chore.lastDay());
      }
    }
    for (int first : firsts) {
      for (int last : lasts) {
        if (first <= last && last - first < end && bounds.size() < MOST_BOUNDS) {
          bounds.add(new WorthBound(chores, graph, first, last));
        }
      }
    }
    return bounds;
  }

  /**
   * A bound.
   *
   * @param most no allowed set is worth more
   * @param low a set that is within the time
   * @param high a set that is beyond it, or the same as {@code low} when that is the best
   */
  record Relaxed(long most, BitSet low, BitSet high) {}

  /** A set with its worth and minutes, counted from what is decided. */
  private record Side(BitSet set, long worth, long minutes) {}

  /** Arcs of cuts looked at so far. */
  long steps() {
    return flow.steps();
  }

  /**
   * The bound when some is decided.
   *
   * @param in what is done, with all that it requires, within the time
   * @param out what is not done, with all that requires it
   */
  Relaxed of(BitSet in, BitSet out) {
    return of(in, out, ALL);
  }

  /**
   * The bound for less time than there is.
   *
   * @param decided as {@code in} above
   * @param out as above
   * @param share how many per cent of the time
   */
  Relaxed of(BitSet decided, BitSet out, int share) {
    BitSet in = own(decided);
    long room = time * share / ALL - minutes(in);
    long worth = in.stream().mapToLong(graph::worth).sum();
    if (room < 0) {
      return new Relaxed(share == ALL ? -1 : worth, decided, decided);
    }
    Side low = side(new BitSet(), in);
    Side high = side(worthwhile(in, out), in);
    if (high.minutes() <= room) {
      return relaxed(worth + high.worth(), in, high, high);
    }
    long least = Long.MAX_VALUE;
    long[] profit = new long[graph.nodes()];
    for (int i = 0; i < ROUNDS; i++) {
      long price = (high.worth() - low.worth()) * fine / (high.minutes() - low.minutes());
      for (int node = 0; node < profit.length; node++) {
        profit[node] = in.get(node) ? 0 : out.get(node) ? -MOST : worthAt(price, node);
      }
      BitSet set = new BitSet();
      long gain = flow.solve(profit, set);
      least = Math.min(least, gain + price * room);
      if (gain <= Math.max(at(price, low), at(price, high))) {
        break;
      }
      Side found = side(set, in);
      if (found.minutes() <= room) {
        low = found;
      } else {
        high = found;
      }
    }
    return relaxed(worth + Math.floorDiv(least, fine), in, low, high);
  }

  private static Relaxed relaxed(long most, BitSet in, Side low, Side high) {
    BitSet first = (BitSet) low.set().clone();
    first.or(in);
    BitSet second = (BitSet) high.set().clone();
    second.or(in);
    return new Relaxed(most, first, second);
  }

  /** What is decided, with what is opened for it as far as it is counted. */
  private BitSet own(BitSet decided) {
    BitSet own = decided.get(0, chores);
    for (int node = own.nextSetBit(0);
        node >= 0 && node < chores;
        node = own.nextSetBit(node + 1)) {
      for (int required : requires[node]) {
        own.set(required);
      }
    }
    return own;
  }

  private long minutes(BitSet set) {
    long sum = 0;
    for (int node = set.nextSetBit(0); node >= 0; node = set.nextSetBit(node + 1)) {
      sum += minutes[node];
    }
    return sum;
  }

  private long worthAt(long price, int node) {
    return graph.worth(node) * fine - price * minutes[node];
  }

  private long at(long price, Side side) {
    return side.worth() * fine - price * side.minutes();
  }

  private Side side(BitSet set, BitSet in) {
    BitSet rest = (BitSet) set.clone();
    rest.andNot(in);
    return new Side(rest, rest.stream().mapToLong(graph::worth).sum(), minutes(rest));
  }

  /** All that is worth something and not out, with what it requires. */
  private BitSet worthwhile(BitSet in, BitSet out) {
    BitSet set = new BitSet();
    for (int node = 0; node < graph.nodes(); node++) {
      if (graph.worth(node) > 0 && !out.get(node) && !in.get(node) && !set.get(node)) {
        set.or(graph.with(node));
      }
    }
    return set;
  }
}
