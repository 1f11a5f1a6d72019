package limberboard.trace;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import limberboard.boat.WorkCaution;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep.CallYard;

/**
 * A diagnostic tree cut down to some of its forks, so that it goes into little room. Immutable.
 *
 * @param tree the whole tree
 * @param kept the numbers of the forks that are kept, in order: with each the one that leads to it
 */
public record TreeCut(DiagnosticTree tree, List<Integer> kept) {
  /** Copies the numbers and puts them in order. */
  public TreeCut {
    kept = kept.stream().sorted().toList();
  }

  /** What keeps every fork of a tree. */
  public static TreeCut all(DiagnosticTree tree) {
    return new TreeCut(tree, tree.forks().stream().map(Fork::number).toList());
  }

  /**
   * The cut that keeps the first levels.
   *
   * @param levels how many steps one after the other, the root being the first; from 1, and with as
   *     many as the tree is deep or more the whole tree
   */
  public static TreeCut levels(DiagnosticTree tree, int levels) {
    List<Integer> kept = new ArrayList<>();
    List<Fork> level = List.of(tree.root());
    for (int i = 0; i < levels && !level.isEmpty(); i++) {
      level.forEach(fork -> kept.add(fork.number()));
      level = level.stream().flatMap(TreeCut::behind).toList();
    }
    return new TreeCut(tree, kept);
  }

  private static Stream<Fork> behind(Fork fork) {
    return fork.branches().stream().flatMap(branch -> branch.then().stream());
  }

  /** The cut that keeps the root alone. */
  public static TreeCut root(DiagnosticTree tree) {
    return new TreeCut(tree, List.of(tree.root().number()));
  }

  /**
   * The cut that grows from the root, the best first: as long as something fits, it takes the fork,
   * with the forks on the way to it, that adds the most share for the room it takes. It covers
   * much, but need not cover the most of all cuts that fit.
   *
   * @param room about how much room a fork takes; above 0, in any one unit
   * @param fits whether a cut fits; one that keeps more must not fit where one that keeps less does
   *     not
   */
  public static TreeCut bestFirst(
      DiagnosticTree tree, ToDoubleFunction<Fork> room, Predicate<TreeCut> fits) {
    return new Growth(tree, room, fits).grown();
  }

  /** What keeps every fork of the same tree. */
  public TreeCut whole() {
    return all(tree);
  }

  /** Whether every fork is kept. */
  public boolean isWhole() {
    return kept.size() == tree.forks().size();
  }

  /** Whether a fork is kept. */
  public boolean keeps(Fork fork) {
    return Collections.binarySearch(kept, fork.number()) >= 0;
  }

  /** The forks that are kept, each before those behind it. */
  public List<Fork> forks() {
    return tree.forks().stream().filter(this::keeps).toList();
  }

  /** The first fork on each way that is not kept: where going by this cut goes on elsewhere. */
  public List<Fork> ends() {
    return forks().stream().flatMap(TreeCut::behind).filter(fork -> !keeps(fork)).toList();
  }

  /** The chance that going by this cut ends at a mend or at handing over that it shows, 0 to 1. */
  public double share() {
    return forks().stream().mapToDouble(TreeCut::ending).sum();
  }

  /** The cautions before any question and those of the forks that are kept. */
  public List<WorkCaution> cautions() {
    return tree.cautionsOf(forks());
  }

  /** The chance, from where the tree begins, of ending at this very fork. */
  private static double ending(Fork fork) {
    if (fork.step() instanceof CallYard) {
      return fork.chance();
    }
    return fork.branches().stream()
        .filter(branch -> branch.end() == End.MENDED)
        .mapToDouble(branch -> fork.chance() * branch.chance())
        .sum();
  }

  /** A cut in the making. */
  private static final class Growth {
    private final DiagnosticTree tree;
    private final Predicate<TreeCut> fits;
    private final Map<Integer, Fork> parents = new HashMap<>();
    private final Map<Integer, Double> rooms = new HashMap<>();
    private final Map<Integer, Double> endings = new HashMap<>();
    private final Set<Integer> kept = new TreeSet<>();

    Growth(DiagnosticTree tree, ToDoubleFunction<Fork> room, Predicate<TreeCut> fits) {
      this.tree = tree;
      this.fits = fits;
      for (Fork fork : tree.forks()) {
        rooms.put(fork.number(), room.applyAsDouble(fork));
        endings.put(fork.number(), ending(fork));
        for (Branch branch : fork.branches()) {
          branch.then().ifPresent(then -> parents.put(then.number(), fork));
        }
      }
      kept.add(tree.root().number());
    }

    /** What has no room once has none later: what is kept only grows. */
    TreeCut grown() {
      List<Fork> open = new ArrayList<>(tree.forks());
      open.remove(tree.root());
      while (!open.isEmpty()) {
        Fork best = Collections.max(open, Comparator.comparingDouble(this::worth));
        Set<Integer> more = new TreeSet<>(kept);
        more.addAll(missing(best));
        if (worth(best) > 0 && fits.test(new TreeCut(tree, List.copyOf(more)))) {
          kept.addAll(more);
        }
        open.remove(best);
        open.removeIf(fork -> kept.contains(fork.number()));
      }
      return new TreeCut(tree, List.copyOf(kept));
    }

    private double worth(Fork fork) {
      List<Integer> missing = missing(fork);
      double room = missing.stream().mapToDouble(rooms::get).sum();
      return missing.stream().mapToDouble(endings::get).sum() / room;
    }

    /** A fork and those on the way to it that are not kept yet. */
    private List<Integer> missing(Fork fork) {
      List<Integer> missing = new ArrayList<>();
      Fork at = fork;
      while (at != null && !kept.contains(at.number())) {
        missing.add(at.number());
        at = parents.get(at.number());
      }
      return missing;
    }
  }
}
