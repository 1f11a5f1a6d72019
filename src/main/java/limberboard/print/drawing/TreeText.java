package limberboard.print.drawing;

import limberboard.print.text.PlainText;
import limberboard.print.text.TextLines;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.words.PerCent;

/**
 * A diagnostic tree for a terminal: cautions first, then every fork below the answer that leads to
 * it, indented by how deep it lies. Stateless.
 */
public final class TreeText {
  private static final String BY_DEPTH =
      "Begin at 1. Do what it says, find your answer below it, and go on with what stands under"
          + " that answer.";
  private static final int NARROWEST = 40;

  /**
   * The tree as lines.
   *
   * @param tree the tree
   * @param width of the terminal, in characters; less than 40 counts as 40
   */
  public String render(DiagnosticTree tree, int width) {
    TextLines out = new TextLines(Math.max(NARROWEST, width));
    out.underlined("The steps", '-');
    fork(tree.root(), out);
    return new PlainText().render(new TreeSheet().front(tree, BY_DEPTH), width) + out;
  }

  private void fork(Fork fork, TextLines out) {
    out.item(fork.number() + ". ");
    out.wrapped(TreeWords.what(fork.step()));
    TreeSheet.facts(fork).forEach(out::wrapped);
    out.out();
    fork.branches().forEach(branch -> branch(branch, out));
  }

  private void branch(Branch branch, TextLines out) {
    out.in("  ");
    String then =
        switch (branch.end()) {
          case MENDED -> ": done";
          case TOO_RARE -> ": seldom, " + TreeWords.likeliest(branch);
          case FORK -> ":";
        };
    out.wrapped(branch.finding().words() + ", " + PerCent.words(branch.chance()) + then);
    out.in("  ");
    branch.then().ifPresent(next -> fork(next, out));
    out.out();
    out.out();
  }
}
