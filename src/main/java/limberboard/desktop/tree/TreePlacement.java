package limberboard.desktop.tree;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * Lays a tree out once, each fork beside the one before it and its branches below one another. The
 * time it takes grows with the number of forks that are shown.
 */
final class TreePlacement {
  private final TreeWalk walk;
  private final Grid grid;
  private final Texts texts;
  private final Extents extents;
  private final List<Box> boxes = new ArrayList<>();
  private final List<Twig> twigs = new ArrayList<>();
  private double right;

  TreePlacement(TreeWalk walk, Grid grid) {
    this.walk = walk;
    this.grid = grid;
    this.texts = new Texts(grid);
    this.extents = new Extents(walk, grid, texts);
  }

  TreeLayout layout() {
    Fork root = walk.tree().root();
    place(root, grid.margin(), grid.margin() + extents.up(root));
    double height = extents.up(root) + extents.down(root) + 2 * grid.margin();
    return new TreeLayout(boxes, twigs, grid, right + grid.margin(), height);
  }

  private void place(Fork fork, double x, double middle) {
    box(fork, x, middle);
    if (!walk.isOpen(fork)) {
      return;
    }
    double next = x + grid.boxWidth() + grid.gap();
    List<Double> middles = extents.middles(fork);
    for (int i = 0; i < middles.size(); i++) {
      Branch branch = fork.branches().get(i);
      double end = middle + middles.get(i);
      twig(branch, new Point2D.Double(x + grid.boxWidth(), middle), new Point2D.Double(next, end));
      branch.then().ifPresent(then -> place(then, next, end));
    }
  }

  private void twig(Branch branch, Point2D from, Point2D to) {
    double trunk = from.getX() + grid.stub();
    twigs.add(new Twig(branch, from, trunk, to, texts.label(branch), tag(branch, to)));
  }

  private Optional<Rectangle2D> tag(Branch branch, Point2D to) {
    if (branch.end() == End.FORK) {
      return Optional.empty();
    }
    double top = to.getY() - grid.flag() / 2;
    Rectangle2D tag = new Rectangle2D.Double(to.getX(), top, texts.endWidth(branch), grid.flag());
    right = Math.max(right, tag.getMaxX());
    return Optional.of(tag);
  }

  private void box(Fork fork, double x, double middle) {
    double height = texts.boxHeight(fork);
    Rectangle2D bounds = new Rectangle2D.Double(x, middle - height / 2, grid.boxWidth(), height);
    boolean open = walk.isOpen(fork);
    String more = open || !walk.canFold(fork) ? "" : ForkWords.folded(walk.behind(fork));
    boxes.add(new Box(fork, bounds, texts.step(fork), mark(fork, bounds), open, more));
    double after = more.isEmpty() ? 0 : grid.mark() + grid.measure().width(more, false);
    right = Math.max(right, bounds.getMaxX() + after + 2 * grid.mark());
  }

  private Optional<Ellipse2D> mark(Fork fork, Rectangle2D bounds) {
    if (!walk.canFold(fork)) {
      return Optional.empty();
    }
    double radius = grid.mark();
    return Optional.of(
        new Ellipse2D.Double(
            bounds.getMaxX() - radius / 2, bounds.getCenterY() - radius, 2 * radius, 2 * radius));
  }
}
