package limberboard.desktop.tree;

import java.awt.BorderLayout;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Keys;
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
  private final LevelsBox levels;

  /**
   * The buttons.
   *
   * @param out prints and saves the tree
   */
  TreeTools(TreeModel model, TreeCanvas view, TreeOut out) {
    super(new BorderLayout());
    this.model = model;
    this.view = view;
    this.levels = new LevelsBox(model);
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
    JButton fit =
        tool("Fit", "tree-fit", "Everything that is unfolded at once (F)", view.sight()::fit);
    JButton unfold = tool("Unfold all", "tree-unfold", "Shows everything (U)", this::unfold);
    JButton fold =
        tool(
            "Fold again",
            "tree-fold",
            "Shows the first steps and the way to where you are",
            () -> model.walk().ifPresent(TreeWalk::foldAgain));
    smaller.getAccessibleContext().setAccessibleName("Smaller");
    larger.getAccessibleContext().setAccessibleName("Larger");
    other.setName("tree-other");
    add(
        new Tools(
            "tree-more",
            8,
            List.of(here, smaller, size, larger, fit, levels, other),
            Stream.concat(Stream.of(unfold, fold), papers(out).stream()).toList()));
    view.sight().onZoom(this::refresh);
    Keys.focused(view, "F", view.sight()::fit);
    Keys.focused(view, "U", this::unfold);
  }

  private List<JButton> papers(TreeOut out) {
    return List.of(
        tool(
            "Print …",
            "tree-print",
            "As many levels as are chosen, by numbers, on sheets",
            () -> model.cut().ifPresent(out::print)),
        tool(
            "Save as PDF …",
            "tree-pdf",
            "As many levels as are chosen, by numbers, on sheets",
            () -> model.cut().ifPresent(out::save)),
        tool(
            "Print card …",
            "tree-card-print",
            "As much of what happens as goes on one sheet, for a locker's lid",
            () -> with(out::printCard)),
        tool(
            "Save card as PDF …",
            "tree-card-pdf",
            "As much of what happens as goes on one sheet, for a locker's lid",
            () -> with(out::saveCard)),
        tool(
            "Save drawing …",
            "tree-svg",
            "As many levels as are chosen, as one SVG",
            () -> model.cut().ifPresent(out::draw)));
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
    model.chooseLevels(OptionalInt.empty());
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
    levels.refresh();
    other.setText(model.isFromHere() ? "From the beginning" : "From where I am");
    other.setVisible(model.wentAnotherWay());
  }
}
