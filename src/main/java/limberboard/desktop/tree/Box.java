package limberboard.desktop.tree;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import limberboard.trace.DiagnosticTree.Fork;

/**
 * Where a fork lies.
 *
 * @param fork the fork
 * @param bounds its box
 * @param lines what is to be done, broken into lines
 * @param mark where it is folded and unfolded, when there is something behind it
 * @param open whether what is behind it is shown
 * @param more how many forks are folded away behind it, in words, or empty
 */
record Box(
    Fork fork,
    Rectangle2D bounds,
    List<String> lines,
    Optional<Ellipse2D> mark,
    boolean open,
    String more) {
  Box {
    lines = List.copyOf(lines);
  }
}
