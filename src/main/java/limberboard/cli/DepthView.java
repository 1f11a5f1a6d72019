package limberboard.cli;

import java.util.List;
import limberboard.cli.TraceView.CautionView;
import limberboard.cli.TreeView.ForkView;
import limberboard.cli.TreeView.LeadingView;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.TreeCut;

/**
 * The first levels of a tree as {@code tree --depth --json} prints them: the keys are those of the
 * whole tree, with how deep that is, the share of what happens that these levels cover, 0 to 1, and
 * what comes next on each way that goes on.
 */
record DepthView(
    String symptom,
    String boat,
    int levels,
    double share,
    List<CautionView> cautions,
    List<ForkView> forks,
    List<NextView> goesOn) {

  /** A fork that is left out, with what it may be there. */
  record NextView(
      int number, String kind, String id, String text, double chance, List<LeadingView> leading) {
    static NextView of(Fork fork) {
      return new NextView(
          fork.number(),
          fork.step().kind(),
          fork.step().id(),
          fork.step().text(),
          fork.chance(),
          LeadingView.of(fork));
    }
  }

  static DepthView of(TreeCut cut) {
    return new DepthView(
        cut.tree().from().fault().page().id(),
        cut.tree().from().fault().fitting().boat().id(),
        cut.tree().depth(),
        cut.share(),
        CautionView.of(cut.cautions()),
        cut.forks().stream().map(ForkView::of).toList(),
        cut.ends().stream().map(NextView::of).toList());
  }
}
