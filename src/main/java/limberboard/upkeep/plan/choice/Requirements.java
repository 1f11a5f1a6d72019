package limberboard.upkeep.plan.choice;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What each chore brings with it when it is chosen: what comes before it, what must be open for it,
 * and what is better than it in every respect. Chores have the first numbers, then come the
 * openings. Not changed once made.
 */
final class Requirements {
  private final Chores chores;
  private final int[][] direct;
  private final BitSet[] all;
  private final BitSet[] dependants;

  Requirements(Chores chores) {
    this.chores = chores;
    int nodes = chores.size() + chores.openings().size();
    List<Set<Integer>> required = new ArrayList<>();
    for (Chore chore : chores.chores()) {
      Set<Integer> each = new HashSet<>(chore.after());
      chore.opens().forEach(opening -> each.add(chores.size() + opening));
      required.add(each);
    }
    addBetter(required);
    direct = new int[nodes][];
    all = new BitSet[nodes];
    dependants = new BitSet[nodes];
    for (int node = 0; node < nodes; node++) {
      direct[node] =
          node < chores.size()
              ? required.get(node).stream().mapToInt(Integer::intValue).sorted().toArray()
              : new int[0];
      dependants[node] = new BitSet();
    }
    for (int node = 0; node < nodes; node++) {
      collect(node);
    }
    for (int node = 0; node < nodes; node++) {
      int dependant = node;
      all[node].stream().forEach(each -> dependants[each].set(dependant));
    }
  }

  /** Gathers what a node requires, directly or not, and itself. */
  private BitSet collect(int node) {
    List<Integer> open = new ArrayList<>(List.of(node));
    while (!open.isEmpty()) {
      int last = open.get(open.size() - 1);
      int waiting = -1;
      for (int required : direct[last]) {
        if (all[required] == null) {
          waiting = required;
        }
      }
      if (all[last] != null || waiting < 0) {
        if (all[last] == null) {
          BitSet set = new BitSet();
          set.set(last);
          for (int required : direct[last]) {
            set.or(all[required]);
          }
          all[last] = set;
        }
        open.remove(open.size() - 1);
      } else {
        open.add(waiting);
      }
    }
    return all[node];
  }

  /**
   * A chore that nothing waits for is chosen only after any that takes no longer, is worth no less,
   * has nothing more to be opened, comes behind the same, comes before nothing that could be done
   * without it and can be done whenever it can: wherever it is done, the better one could be done
   * instead. Of two that are alike in all this the one with the lower number counts as the better.
   * One better chore for each is enough, since that has its own.
   */
  private void addBetter(List<Set<Integer>> required) {
    Set<Integer> awaited = new HashSet<>();
    Set<Integer> followed = new HashSet<>();
    for (Chore chore : chores.chores()) {
      awaited.addAll(chore.after());
      followed.addAll(chore.behind());
    }
    for (int one = 0; one < chores.size(); one++) {
      int better = -1;
      for (int other = 0; other < chores.size() && !awaited.contains(one); other++) {
        if (!followed.contains(other)
            && isBetter(other, one)
            && (better < 0 || isBetter(better, other))) {
          better = other;
        }
      }
      if (better >= 0) {
        required.get(one).add(better);
      }
    }
  }

  private boolean isBetter(int one, int other) {
    Chore better = chores.chore(one);
    Chore worse = chores.chore(other);
    boolean atLeast =
        one != other
            && better.minutes() <= worse.minutes()
            && better.worth() >= worse.worth()
            && better.stage() == worse.stage()
            && better.firstDay() <= worse.firstDay()
            && better.lastDay() >= worse.lastDay()
            && worse.opens().containsAll(better.opens())
            && worse.after().equals(better.after())
            && worse.behind().equals(better.behind());
    return atLeast && (one < other || !better.equals(worse));
  }

  /** What a node requires, directly. */
  int[][] direct() {
    return direct;
  }

  /** A node with all that it requires. */
  BitSet with(int node) {
    return all[node];
  }

  /** A node with all that require it. */
  BitSet dependants(int node) {
    return dependants[node];
  }

  /** Minutes of a set of chores and openings. */
  long minutes(BitSet nodes) {
    long sum = 0;
    for (int node = nodes.nextSetBit(0); node >= 0; node = nodes.nextSetBit(node + 1)) {
      sum += minutes(node);
    }
    return sum;
  }

  int minutes(int node) {
    return node < chores.size()
        ? chores.chore(node).minutes()
        : chores.opening(node - chores.size());
  }

  long worth(int node) {
    return node < chores.size() ? chores.chore(node).worth() : 0;
  }

  int nodes() {
    return direct.length;
  }
}
