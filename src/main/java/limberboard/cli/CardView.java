package limberboard.cli;

import java.util.List;
import limberboard.cli.TraceView.CautionView;
import limberboard.cli.TreeView.ForkView;
import limberboard.trace.TreeCut;

/**
 * The card of a tree as {@code tree --card --json} prints it: the keys are those of the whole tree,
 * with the share of what happens that the card covers, 0 to 1.
 */
record CardView(
    String symptom, String boat, double share, List<CautionView> cautions, List<ForkView> forks) {
  static CardView of(TreeCut cut) {
    return new CardView(
        cut.tree().from().fault().page().id(),
        cut.tree().from().fault().fitting().boat().id(),
        cut.share(),
        CautionView.of(cut.cautions()),
        cut.forks().stream().map(ForkView::of).toList());
  }
}
