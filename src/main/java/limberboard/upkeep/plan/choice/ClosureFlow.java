package limberboard.upkeep.plan.choice;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Finds the set of nodes of the greatest profit that holds, with each node, all that it requires: a
 * minimum cut (Picard, <i>Maximal closure of a graph and applications to combinatorial
 * problems</i>, Management Science 22, 1976), by flows in layers (Dinic 1970). For one thread; the
 * graph stays, the profits change.
 */
final class ClosureFlow {
  private static final long ENDLESS = Long.MAX_VALUE / 4;

  private final int nodes;
  private final int source;
  private final int sink;
  private final int[] head;
  private final int[] next;
  private final int[] to;
  private final long[] room;
  private final int fixedArcs;
  private final int[] level;
  private final int[] at;
  private final int[] line;
  private final int[] way;
  private int arcs;
  private long steps;

  /**
   * A graph.
   *
   * @param requires for each node the numbers of those that it requires
   */
  ClosureFlow(int[][] requires) {
    nodes = requires.length;
    source = nodes;
    sink = nodes + 1;
    int most = 2 * nodes;
    for (int[] each : requires) {
      most += 2 * each.length;
    }
    head = new int[nodes + 2];
    Arrays.fill(head, -1);
    next = new int[most];
    to = new int[most];
    room = new long[most];
    level = new int[nodes + 2];
    at = new int[nodes + 2];
    line = new int[nodes + 2];
    way = new int[nodes + 2];
    for (int node = 0; node < nodes; node++) {
      for (int required : requires[node]) {
        arc(node, required);
      }
    }
    fixedArcs = arcs;
  }

  /** An arc and its way back. */
  private void arc(int from, int goal) {
    put(from, goal);
    put(goal, from);
  }

  private void put(int from, int goal) {
    to[arcs] = goal;
    next[arcs] = head[from];
    head[from] = arcs;
    arcs++;
  }

  /** Arcs looked at so far. */
  long steps() {
    return steps;
  }

  /**
   * Finds the set, the smallest of those that are equally good.
   *
   * @param profit of each node
   * @param into takes the set
   * @return its profit, at least 0
   */
  long solve(long[] profit, BitSet into) {
    long all = begin(profit);
    long flow = 0;
    while (layer()) {
      System.arraycopy(head, 0, at, 0, head.length);
      for (long pushed = push(); pushed > 0; pushed = push()) {
        flow += pushed;
      }
    }
    into.clear();
    for (int node = 0; node < nodes; node++) {
      if (level[node] >= 0) {
        into.set(node);
      }
    }
    return all - flow;
  }

  /** Joins each node to the source by what it brings, or to the sink by what it costs. */
  private long begin(long[] profit) {
    arcs = fixedArcs;
    Arrays.fill(head, -1);
    for (int arc = 0; arc < fixedArcs; arc++) {
      int from = to[arc ^ 1];
      next[arc] = head[from];
      head[from] = arc;
      room[arc] = (arc & 1) == 0 ? ENDLESS : 0;
    }
    long all = 0;
    for (int node = 0; node < nodes; node++) {
      room[arcs] = Math.abs(profit[node]);
      room[arcs + 1] = 0;
      if (profit[node] > 0) {
        all += profit[node];
        arc(source, node);
      } else {
        arc(node, sink);
      }
    }
    return all;
  }

  private boolean layer() {
    Arrays.fill(level, -1);
    level[source] = 0;
    int end = 1;
    line[0] = source;
    for (int i = 0; i < end; i++) {
      for (int arc = head[line[i]]; arc >= 0; arc = next[arc]) {
        steps++;
        if (room[arc] > 0 && level[to[arc]] < 0) {
          level[to[arc]] = level[line[i]] + 1;
          line[end] = to[arc];
          end++;
        }
      }
    }
    return level[sink] >= 0;
  }

  /** Sends as much as one way takes; 0 when there is no way left. */
  private long push() {
    int depth = 0;
    int node = source;
    while (node != sink) {
      int arc = at[node];
      if (arc < 0) {
        if (depth == 0) {
          return 0;
        }
        depth--;
        node = to[way[depth] ^ 1];
        at[node] = next[at[node]];
      } else if (room[arc] > 0 && level[to[arc]] == level[node] + 1) {
        way[depth] = arc;
        depth++;
        node = to[arc];
      } else {
        at[node] = next[arc];
      }
      steps++;
    }
    long least = ENDLESS;
    for (int i = 0; i < depth; i++) {
      least = Math.min(least, room[way[i]]);
    }
    for (int i = 0; i < depth; i++) {
      room[way[i]] -= least;
      room[way[i] ^ 1] += least;
    }
    return least;
  }
}
