package limberboard.desktop.trace;

import java.awt.Rectangle;
import java.util.List;
import javax.swing.JComponent;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.CautionBox;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.FocusedText;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.print.cut.Cautions;

/**
 * The whole text of the cautions of a step and of its symptom, in place of the step until one goes
 * back.
 */
public final class WholeCautions extends Docked {
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final Wrapped title = Text.heading(Cautions.IN_FULL);
  private final Row buttons;

  /**
   * Nothing shown yet.
   *
   * @param back shows the step again
   */
  public WholeCautions(Runnable back) {
    super(10);
    new FocusedText(title, sheet).named("whole-cautions");
    buttons =
        Row.wrapping(
            10, Buttons.plain("Back to the step", "cautions-back", "F7, or Escape", back::run));
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(buttons);
    Keys.within(this, "ESCAPE", back);
    dock(sheet, foot);
  }

  /** Shows the whole text of these. */
  public void show(List<WorkCaution> cautions) {
    sheet.removeAll();
    sheet.add(title);
    cautions.forEach(caution -> sheet.add(CautionBox.whole(caution)));
    sheet.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    revalidate();
    repaint();
  }

  /** The heading takes the focus, so that keys move the text. */
  public JComponent first() {
    return title;
  }

  /** The regions that keys go through. */
  public List<JComponent> regions() {
    return List.of(title, buttons);
  }
}
