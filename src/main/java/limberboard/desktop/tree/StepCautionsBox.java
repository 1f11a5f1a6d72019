package limberboard.desktop.tree;

import java.util.List;
import java.util.function.Predicate;
import javax.swing.JToggleButton;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;

/**
 * The cautions of a step: a single one in short, unless it has been read; several by name until
 * more is asked for, so that all of them are in sight at once.
 */
final class StepCautionsBox extends Column {
  private final transient List<WorkCaution> cautions;
  private final transient Predicate<WorkCaution> isRead;
  private final JToggleButton more = new JToggleButton();

  StepCautionsBox(List<WorkCaution> cautions, Predicate<WorkCaution> isRead) {
    super(4);
    this.cautions = List.copyOf(cautions);
    this.isRead = isRead;
    more.putClientProperty("FlatLaf.style", "margin: 1,8,1,8; arc: 8");
    more.setName("tree-cautions");
    more.setToolTipText("The danger and the rule of each");
    more.setSelected(cautions.size() == 1 && !isRead.test(cautions.get(0)));
    more.addActionListener(e -> fill());
    fill();
  }

  private void fill() {
    more.setText(more.isSelected() ? "Names" : "In short");
    removeAll();
    add(
        more.isSelected()
            ? CautionBox.brief(cautions, more)
            : CautionBox.names(
                cautions, caution -> isRead.test(caution) ? "read" : caution.because(), more));
    revalidate();
    repaint();
  }
}
