package limberboard.desktop.tree;

import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Tools;
import limberboard.trace.DiagnosticTree;

/** The buttons above a tree. */
final class TreeTools extends JPanel {
  private final transient TreeModel model;
  private final TreeCanvas view;
  private final JButton here;
  private final JButton other = Buttons.plain("", this::changeTree);
  private final JLabel size = Text.label("");

  /**
   * The buttons.
   *
   * @param out prints and saves the tree
   */
  TreeTools(TreeModel model, TreeCanvas view, TreeOut out) {
    super(new BorderLayout());
    this.model = model;
    this.view = view;
    setOpaque(false);
    here = tool("Where I am", "tree-here", "Goes to where you are (H)", this::toHere);
    here.setMnemonic('H');
    JButton smaller =
        tool(
            "\u2212",
            "tree-smaller",
            "Smaller (Ctrl and minus)",
            () -> view.sight().zoom(view.sight().zoom().by(-1)));
    JButton larger =
        tool(
            "+",
            "tree-larger",
            "Larger (Ctrl and plus)",
            () -> view.sight().zoom(view.sight().zoom().by(1)));
    JButton fit = tool("Fit", "tree-fit", "Everything that is unfolded at once", view.sight()::fit);
    JButton unfold = tool("Unfold all", "tree-unfold", "Shows everything", this::unfold);
    JButton fold =
        tool(
            "Fold again",
            "tree-fold",
            "Shows the first steps and the way to where you are",
            () -> model.walk().ifPresent(TreeWalk::foldAgain));
    JButton print =
        tool("Print …", "tree-print", "The tree by numbers, on sheets", () -> with(out::print));
    JButton save =
        tool("Save as PDF …", "tree-pdf", "The tree by numbers, on sheets", () -> with(out::save));
    JButton draw =
        tool("Save drawing …", "tree-svg", "The whole tree as one SVG", () -> with(out::draw));
    smaller.getAccessibleContext().setAccessibleName("Smaller");
    larger.getAccessibleContext().setAccessibleName("Larger");
    other.setName("tree-other");
    add(
        new Tools(
            "tree-more",
            8,
            List.of(here, smaller, size, larger, fit, other),
            List.of(unfold, fold, print, save, draw)));
    view.sight().onZoom(this::refresh);
  }

  private static JButton tool(String text, String name, String tip, Runnable action) {
    JButton button = Buttons.plain(text, action);
    button.setName(name);
    button.setToolTipText(tip);
    return button;
  }

  private void with(Consumer<DiagnosticTree> action) {
    model.walk().map(TreeWalk::tree).ifPresent(action);
  }

  private void unfold() {
    model.walk().ifPresent(TreeWalk::unfoldAll);
    view.sight().overview();
  }

  private void toHere() {
    model.walk().ifPresent(TreeWalk::toHere);
    view.sight().reveal();
    view.requestFocusInWindow();
  }

  private void changeTree() {
    if (model.isFromHere()) {
      model.showFromBeginning();
    } else {
      model.showFromHere();
    }
  }

  void refresh() {
    here.setEnabled(model.walk().flatMap(TreeWalk::here).isPresent());
    size.setText(view.sight().zoom().words());
    other.setText(model.isFromHere() ? "From the beginning" : "From where I am");
    other.setVisible(model.wentAnotherWay());
  }
}
