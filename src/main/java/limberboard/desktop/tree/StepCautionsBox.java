package limberboard.desktop.tree;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;

/**
 * The cautions of a step: one of them in brief, several by name until more is asked for, so that
 * all of them are in sight at once.
 */
final class StepCautionsBox extends Column {
  private final transient List<Page<Caution>> cautions;
  private final JToggleButton more = new JToggleButton("What to do");

  StepCautionsBox(List<Page<Caution>> cautions) {
    super(4);
    this.cautions = List.copyOf(cautions);
    more.putClientProperty("FlatLaf.style", "margin: 1,8,1,8; arc: 8");
    more.setName("tree-cautions");
    more.setToolTipText("What the cautions of this step say");
    more.setSelected(cautions.size() == 1);
    more.addActionListener(e -> fill());
    fill();
  }

  private void fill() {
    removeAll();
    for (Page<Caution> page : cautions) {
      boolean first = cautions.size() > 1 && page.equals(cautions.get(0));
      JComponent[] controls = first ? new JComponent[] {more} : new JComponent[0];
      add(more.isSelected() ? CautionBox.brief(page, controls) : CautionBox.title(page, controls));
    }
    more.setText(more.isSelected() ? "Names" : "What to do");
    revalidate();
    repaint();
  }
}
