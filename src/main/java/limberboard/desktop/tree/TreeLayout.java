package limberboard.desktop.tree;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import limberboard.print.type.TextMeasure;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * Where everything of a tree lies, with its root at the left and its branches going right, in
 * pixels at the usual zoom. Immutable.
 *
 * @param boxes the forks that no fold hides
 * @param twigs their branches
 * @param grid the sizes it was laid out with
 * @param width of everything
 * @param height of everything
 */
record TreeLayout(List<Box> boxes, List<Twig> twigs, Grid grid, double width, double height) {
  TreeLayout {
    boxes = List.copyOf(boxes);
    twigs = List.copyOf(twigs);
  }

  static TreeLayout of(TreeWalk walk, TextMeasure measure) {
    return new TreePlacement(walk, new Grid(measure)).layout();
  }

  /** The box of a fork, when no fold hides it. */
  Optional<Box> box(Fork fork) {
    return boxes.stream().filter(box -> box.fork().number() == fork.number()).findFirst();
  }

  /** The fork whose box is at a point. */
  Optional<Fork> at(Point2D point) {
    return boxes.stream().filter(box -> box.bounds().contains(point)).map(Box::fork).findFirst();
  }

  /** The fork whose folding mark is at a point. */
  Optional<Fork> markAt(Point2D point) {
    return boxes.stream()
        .filter(box -> box.mark().map(mark -> mark.contains(point)).orElse(false))
        .map(Box::fork)
        .findFirst();
  }
}
