package limberboard.print.drawing;

import limberboard.print.cut.Cautions;
import limberboard.print.page.Part;
import limberboard.print.text.BlockText;
import limberboard.print.text.PlainText;
import limberboard.print.text.TextLines;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.TreeCut;
import limberboard.words.PerCent;

/**
 * A diagnostic tree, whole or cut, for a terminal: cautions in two lines first, then every fork
 * below the answer that leads to it, indented by how deep it lies, and the cautions in full last.
 * Stateless.
 */
public final class TreeText {
  private static final String BY_DEPTH =
      "Begin at 1. Do what it says, find your answer below it, and go on with what stands under"
          + " that answer.";
  private static final int NARROWEST = 40;

  /**
   * The whole tree as lines.
   *
   * @param tree the tree
   * @param width of the terminal, in characters; less than 40 counts as 40
   */
  public String render(DiagnosticTree tree, int width) {
    return render(TreeCut.all(tree), width);
  }

  /** The same of a tree cut down. */
  public String render(TreeCut cut, int width) {
    TextLines out = new TextLines(Math.max(NARROWEST, width));
    out.underlined("The steps", '-');
    fork(cut, cut.tree().root(), out);
    Cautions.inFull(cut.cautions()).ifPresent(full -> inFull(full, out));
    return new PlainText().render(TreeSheet.front(cut, BY_DEPTH), width) + out;
  }

  private static void inFull(Part full, TextLines out) {
    out.underlined(full.title(), '-');
    BlockText blocks = new BlockText(out);
    full.blocks().forEach(block -> block.to(blocks));
  }

  private void fork(TreeCut cut, Fork fork, TextLines out) {
    out.item(fork.number() + ". ");
    out.wrapped(TreeWords.what(fork.step()));
    TreeSheet.facts(fork).forEach(out::wrapped);
    out.out();
    fork.branches().forEach(branch -> branch(cut, branch, out));
  }

  private void branch(TreeCut cut, Branch branch, TextLines out) {
    out.in("  ");
    out.wrapped(
        branch.finding().words() + ", " + PerCent.words(branch.chance()) + then(cut, branch));
    out.in("  ");
    branch.then().filter(cut::keeps).ifPresent(next -> fork(cut, next, out));
    out.out();
    out.out();
  }

  private static String then(TreeCut cut, Branch branch) {
    return switch (branch.end()) {
      case MENDED -> ": done";
      case TOO_RARE -> ": seldom, " + TreeWords.likeliest(branch);
      case FORK -> {
        Fork then = branch.then().orElseThrow();
        yield cut.keeps(then) ? ":" : ": " + TreeWords.goesOn(then);
      }
    };
  }
}
