package limberboard.desktop.tree;

import java.util.ArrayList;
import java.util.List;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * How far forks and what is shown behind them reach up and down from their middles. A fork stands
 * half-way between its first and its last branch; on the way to where the trace stands it stands
 * level with the branch that was taken, so that the way is a straight line.
 */
final class Extents {
  private final TreeWalk walk;
  private final Grid grid;
  private final Texts texts;
  private final double[] up;
  private final double[] down;

  Extents(TreeWalk walk, Grid grid, Texts texts) {
    int size = walk.tree().forks().size() + 1;
    this.walk = walk;
    this.grid = grid;
    this.texts = texts;
    this.up = new double[size];
    this.down = new double[size];
    work(walk.tree().root());
  }

  double up(Fork fork) {
    return up[fork.number()];
  }

  double down(Fork fork) {
    return down[fork.number()];
  }

  private void work(Fork fork) {
    double half = texts.boxHeight(fork) / 2;
    double above = walk.isHere(fork) ? half + grid.flag() : half;
    double below = half;
    if (walk.isOpen(fork)) {
      fork.branches().forEach(branch -> branch.then().ifPresent(this::work));
      List<Double> middles = middles(fork);
      int last = middles.size() - 1;
      double end = middles.get(last) + down(fork.branches().get(last));
      above = Math.max(above, -(middles.get(0) - up(fork.branches().get(0))));
      below = Math.max(below, end);
    }
    up[fork.number()] = above;
    down[fork.number()] = below;
  }

  /** How far below a fork's middle the middles of its branches lie. */
  List<Double> middles(Fork fork) {
    List<Double> middles = new ArrayList<>();
    double y = 0;
    for (Branch branch : fork.branches()) {
      middles.add(y + up(branch));
      y += up(branch) + down(branch) + grid.between();
    }
    double level = level(fork, middles);
    middles.replaceAll(middle -> middle - level);
    return middles;
  }

  private double level(Fork fork, List<Double> middles) {
    for (int i = 0; i < middles.size(); i++) {
      if (fork.branches().get(i).then().map(walk::isOnTheWay).orElse(false)) {
        return middles.get(i);
      }
    }
    return (middles.get(0) + middles.get(middles.size() - 1)) / 2;
  }

  private double up(Branch branch) {
    double label = texts.label(branch).size() * grid.line() + grid.small();
    return Math.max(label, branch.then().map(this::up).orElse(grid.flag() / 2));
  }

  private double down(Branch branch) {
    double chance = grid.line() + grid.small();
    return Math.max(chance, branch.then().map(this::down).orElse(grid.flag() / 2));
  }
}
