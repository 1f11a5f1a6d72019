package limberboard.desktop.tree;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Fork;

/** Who comes from whom in a tree. Immutable. */
final class TreeAncestry {
  private final Fork[] parents;
  private final int[] levels;
  private final int[] behind;

  TreeAncestry(DiagnosticTree tree) {
    int size = tree.forks().size() + 1;
    parents = new Fork[size];
    levels = new int[size];
    behind = new int[size];
    for (Fork fork : tree.forks()) {
      for (Fork child : children(fork)) {
        parents[child.number()] = fork;
        levels[child.number()] = levels[fork.number()] + 1;
      }
    }
    for (int i = tree.forks().size() - 1; i >= 0; i--) {
      int number = tree.forks().get(i).number();
      if (parents[number] != null) {
        behind[parents[number].number()] += behind[number] + 1;
      }
    }
  }

  /** The forks that a fork's branches lead to. */
  List<Fork> children(Fork fork) {
    return fork.branches().stream().flatMap(branch -> branch.then().stream()).toList();
  }

  /** The fork before; none before the root. */
  Optional<Fork> parent(Fork fork) {
    return Optional.ofNullable(parents[fork.number()]);
  }

  /** The forks from the root to the one before a fork. */
  List<Fork> above(Fork fork) {
    List<Fork> above = new ArrayList<>();
    for (Fork at = parents[fork.number()]; at != null; at = parents[at.number()]) {
      above.add(at);
    }
    Collections.reverse(above);
    return above;
  }

  /** How many forks come before a fork on the way from the root. */
  int level(Fork fork) {
    return levels[fork.number()];
  }

  /** How many forks lie behind a fork. */
  int behind(Fork fork) {
    return behind[fork.number()];
  }

  /** Whether the way from the root to a fork leads over another, or ends there. */
  boolean leadsTo(Fork over, Fork to) {
    for (Fork at = to; at != null; at = parents[at.number()]) {
      if (at.number() == over.number()) {
        return true;
      }
    }
    return false;
  }
}
