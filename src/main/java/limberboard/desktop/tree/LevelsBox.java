package limberboard.desktop.tree;

import java.util.OptionalInt;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import limberboard.desktop.parts.ItemWords;
import limberboard.trace.DiagnosticTree;
import limberboard.words.CountWords;

/** Chooses how many levels of a tree are shown, printed and saved. */
final class LevelsBox extends JComboBox<OptionalInt> {
  private final transient TreeModel model;
  private int deep;
  private boolean filling;

  LevelsBox(TreeModel model) {
    this.model = model;
    setName("tree-levels");
    setToolTipText("How many steps one after the other are shown, printed and saved");
    getAccessibleContext().setAccessibleName("Levels shown, printed and saved");
    setRenderer(new ItemWords<OptionalInt>(LevelsBox::words));
    addActionListener(e -> choose());
    refresh();
  }

  private static String words(OptionalInt levels) {
    return levels.isPresent() ? CountWords.of(levels.getAsInt(), "level") : "All levels";
  }

  private void choose() {
    if (!filling && getSelectedItem() instanceof OptionalInt levels) {
      model.chooseLevels(levels);
    }
  }

  /** Offers as many levels as the tree has, and shows which are chosen. */
  void refresh() {
    int now = model.walk().map(TreeWalk::tree).map(DiagnosticTree::depth).orElse(1);
    filling = true;
    if (now != deep) {
      deep = now;
      DefaultComboBoxModel<OptionalInt> items = new DefaultComboBoxModel<>();
      items.addElement(OptionalInt.empty());
      for (int levels = 1; levels < now; levels++) {
        items.addElement(OptionalInt.of(levels));
      }
      setModel(items);
    }
    OptionalInt wanted = model.levels();
    setSelectedItem(wanted.orElse(deep) < deep ? wanted : OptionalInt.empty());
    filling = false;
  }
}
