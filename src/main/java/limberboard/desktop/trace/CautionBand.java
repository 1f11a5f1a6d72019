package limberboard.desktop.trace;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JToggleButton;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;

/**
 * The symptom's cautions at the top while questions are answered: in brief, or whole on request.
 */
final class CautionBand extends Column {
  private final transient TraceModel model;
  private final JToggleButton more = new JToggleButton("What to do");
  private final Column boxes = new Column(6);
  private boolean brief;
  private List<Page<Caution>> shown = List.of();

  CautionBand(TraceModel model) {
    super(4);
    this.model = model;
    more.putClientProperty("FlatLaf.style", "margin: 1,8,1,8; arc: 8");
    more.setName("caution-more");
    more.setToolTipText("Everything the cautions say");
    more.addActionListener(e -> fill());
    add(boxes);
    model.onChange(this::refresh);
    refresh();
  }

  private void refresh() {
    List<Page<Caution>> cautions = model.cautions();
    setVisible(!cautions.isEmpty());
    if (!cautions.equals(shown)) {
      shown = cautions;
      more.setSelected(false);
      fill();
    }
  }

  /** Whether somebody has asked for all that the cautions say. */
  boolean isWhole() {
    return more.isSelected();
  }

  /** Shows no more than the cautions' names until asked for more, where there is little room. */
  void brief(boolean little) {
    if (brief != little) {
      brief = little;
      fill();
    }
  }

  private CautionBox box(Page<Caution> page) {
    JComponent[] controls = page.equals(shown.get(0)) ? new JComponent[] {more} : new JComponent[0];
    return more.isSelected() ? CautionBox.whole(page, controls) : CautionBox.brief(page, controls);
  }

  private void fill() {
    boxes.removeAll();
    if (brief && !more.isSelected() && !shown.isEmpty()) {
      boxes.add(CautionBox.titles(shown, more));
    } else {
      shown.forEach(page -> boxes.add(box(page)));
    }
    more.setText(more.isSelected() ? "In brief" : "What to do");
    revalidate();
    repaint();
  }
}
