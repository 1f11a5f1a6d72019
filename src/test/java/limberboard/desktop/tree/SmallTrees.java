package limberboard.desktop.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.End;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.Fault;
import limberboard.trace.Finding;
import limberboard.trace.Trace;

/** Trees of the small workspace, and made-up ones of any size. */
final class SmallTrees {
  private SmallTrees() {}

  /** The trace of the wet locker, at its beginning. */
  static Trace begin() {
    return begin("knot");
  }

  /** The same on a boat. */
  static Trace begin(String boat) {
    Workspace workspace = SmallWorkspace.read();
    return Trace.begin(
        Fault.of(
            workspace.library().symptom("wet-locker").orElseThrow(),
            new Fitting(workspace.boat(boat).orElseThrow(), SmallWorkspace.TODAY),
            workspace.library(),
            List.of()));
  }

  /** The whole tree of the wet locker. */
  static DiagnosticTree wetLocker() {
    return DiagnosticTree.of(begin(), DiagnosticTree.USUAL_RAREST);
  }

  /** A tree of so many levels, each fork with the same number of branches, all of the same step. */
  static DiagnosticTree regular(int levels, int branches) {
    List<Fork> forks = new ArrayList<>();
    Fork root = fork(begin(), levels, branches, new int[1]);
    root.forEach(forks::add);
    return new DiagnosticTree(begin(), 0, root, forks);
  }

  private static Fork fork(Trace at, int levels, int branches, int[] count) {
    int number = ++count[0];
    List<Branch> all = new ArrayList<>();
    for (int i = 0; i < branches; i++) {
      Optional<Fork> then =
          levels > 1 ? Optional.of(fork(at, levels - 1, branches, count)) : Optional.empty();
      all.add(
          new Branch(
              new Finding.Answer("answer-" + i),
              1.0 / branches,
              then.isPresent() ? End.FORK : i == 0 ? End.MENDED : End.TOO_RARE,
              then,
              Optional.empty()));
    }
    return new Fork(number, at, at.next(), 10, 1, all);
  }
}
