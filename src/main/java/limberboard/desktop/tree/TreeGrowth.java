package limberboard.desktop.tree;

import limberboard.trace.DiagnosticTree;
import limberboard.trace.Trace;

/** A tree that is growing. It grows on one thread, and is watched and stopped from another. */
final class TreeGrowth {
  private final Trace from;
  private volatile int forks;
  private volatile boolean stopped;

  TreeGrowth(Trace from) {
    this.from = from;
  }

  /**
   * Grows the tree; takes up to a few seconds.
   *
   * @throws java.util.concurrent.CancellationException when it has been stopped
   */
  DiagnosticTree tree() {
    return DiagnosticTree.of(from, DiagnosticTree.USUAL_RAREST, this::count);
  }

  private boolean count(int soFar) {
    forks = soFar;
    return !stopped;
  }

  int forks() {
    return forks;
  }

  void stop() {
    stopped = true;
  }
}
