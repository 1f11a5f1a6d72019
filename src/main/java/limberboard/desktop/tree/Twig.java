package limberboard.desktop.tree;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import limberboard.trace.DiagnosticTree.Branch;

/**
 * Where a branch lies: from its fork's box to a trunk that all its branches share, along the trunk,
 * and on to where it ends.
 *
 * @param branch the branch
 * @param from where it leaves its fork's box
 * @param trunk how far right the trunk stands
 * @param to where it ends
 * @param label what is found, broken into lines
 * @param tag where it says how it ends, when it does not lead to a fork
 */
record Twig(
    Branch branch,
    Point2D from,
    double trunk,
    Point2D to,
    List<String> label,
    Optional<Rectangle2D> tag) {
  Twig {
    label = List.copyOf(label);
  }

  /** Everything it covers, with its label. */
  Rectangle2D bounds(double line) {
    Rectangle2D all = new Rectangle2D.Double();
    all.setFrameFromDiagonal(from, to);
    double above = label.size() * line + line;
    all.add(new Rectangle2D.Double(trunk, to.getY() - above, to.getX() - trunk, above + 2 * line));
    tag.ifPresent(all::add);
    return all;
  }
}
