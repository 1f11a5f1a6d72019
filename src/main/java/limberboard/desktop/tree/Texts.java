package limberboard.desktop.tree;

import java.util.List;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.words.Sentences;

/**
 * The texts of a tree, broken into lines.
 *
 * @param grid the sizes
 */
record Texts(Grid grid) {
  private static final int MOST_LINES = 4;
  private static final int MOST_LABEL_LINES = 2;

  /** What is to be done at a fork. */
  List<String> step(Fork fork) {
    double width = grid.boxWidth() - 2 * grid.padding();
    return grid.measure().lines(fork.step().text(), true, width, MOST_LINES);
  }

  /** What is found on a branch. */
  List<String> label(Branch branch) {
    double width = grid.gap() - grid.stub() - 2 * grid.small();
    return grid.measure()
        .lines(Sentences.capital(branch.finding().words()), true, width, MOST_LABEL_LINES);
  }

  /** The height of a fork's box: its kind, what is to be done, and what it costs from there. */
  double boxHeight(Fork fork) {
    return (step(fork).size() + 2) * grid.line() + 2 * grid.padding();
  }

  /** The width of what a branch ends with when it does not lead to a fork. */
  double endWidth(Branch branch) {
    return grid.measure().width(ForkWords.end(branch), true) + 2 * grid.padding();
  }
}
