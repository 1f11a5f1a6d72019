package limberboard.effort;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Mends in clusters within clusters, each cluster opened once and for good, and the best order of
 * the mends by the bottom-up P-over-C algorithm of T. J. Ottosen and F. V. Jensen, <i>The cost of
 * troubleshooting cost clusters with inside information</i>, Uncertainty in Artificial
 * Intelligence, 2010 (the abstract was read; the algorithm is from memory, and is Horn's of 1972
 * for jobs that form trees).
 *
 * <p>From the innermost clusters outwards: the mends and what has been made of the clusters inside
 * are put in the order of chance over minutes; what opens the cluster is put before the first and
 * made one block with as many of those that follow as raise its chance over minutes.
 *
 * @param inside by cluster the one it lies in, −1 for none; always one of a smaller number
 * @param opening minutes by cluster
 * @param clusters by mend the one it lies in, −1 for none
 * @param chances by mend
 * @param minutes by mend
 */
record ClusterTree(
    int[] inside, double[] opening, int[] clusters, double[] chances, double[] minutes) {

  static ClusterTree random(long seed, int clusters, int mends) {
    Random random = new Random(seed);
    return new ClusterTree(
        IntStream.range(0, clusters).map(i -> random.nextInt(i + 1) - 1).toArray(),
        random.doubles(clusters, 1, 40).toArray(),
        IntStream.range(0, mends).map(i -> random.nextInt(clusters + 1) - 1).toArray(),
        Normalised.ofOne(random.doubles(mends, 0.01, 1).toArray()),
        random.doubles(mends, 1, 60).toArray());
  }

  private record Block(double chance, double minutes, double average) {
    /** The average is Σ chance × time of cure, from the block's own beginning on. */
    Block then(Block next) {
      return new Block(
          chance + next.chance,
          minutes + next.minutes,
          average + next.average + minutes * next.chance);
    }

    double ratio() {
      return chance / minutes;
    }
  }

  /** Expected minutes until the fault is mended. */
  double bottomUp() {
    Block all = new Block(0, 0, 0);
    for (Block block : blocks(-1)) {
      all = all.then(block);
    }
    return all.average();
  }

  private Deque<Block> blocks(int cluster) {
    List<Block> within = new ArrayList<>();
    for (int mend = 0; mend < clusters.length; mend++) {
      if (clusters[mend] == cluster) {
        within.add(new Block(chances[mend], minutes[mend], chances[mend] * minutes[mend]));
      }
    }
    for (int inner = 0; inner < inside.length; inner++) {
      if (inside[inner] == cluster) {
        within.addAll(opened(opening[inner], blocks(inner)));
      }
    }
    within.sort(Comparator.comparingDouble(Block::ratio).reversed());
    return new ArrayDeque<>(within);
  }

  private static Deque<Block> opened(double opening, Deque<Block> within) {
    if (!within.isEmpty()) {
      Block first = new Block(0, opening, 0);
      while (!within.isEmpty() && within.peek().ratio() > first.ratio()) {
        first = first.then(within.pop());
      }
      within.push(first);
    }
    return within;
  }

  /** The same as a fault; the yard is never worth calling. */
  EffortModel model() {
    SmallProblem problem = new SmallProblem(chances).access(opening);
    for (int mend = 0; mend < chances.length; mend++) {
      BitSet behind = new BitSet();
      for (int cluster = clusters[mend]; cluster >= 0; cluster = inside[cluster]) {
        behind.set(cluster);
      }
      problem.mend(mend, minutes[mend], behind.stream().toArray());
    }
    return problem.model(1e6);
  }
}
