package limberboard.desktop.trace;

import java.awt.Graphics;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.trace.SecondFault;
import limberboard.trace.Trace;

/** Something about a trace that its next step alone does not say. */
class RemarkBox extends Column {

  /**
   * A box.
   *
   * @param title what it is about
   * @param text what there is to say
   */
  RemarkBox(String title, String text) {
    super(4);
    padded(10, 14, 10, 14);
    add(Text.strong(title));
    add(Text.plain(text));
    getAccessibleContext().setAccessibleName(title);
  }

  /** Adds what there is to say about a trace: contradicting answers, signs of a second fault. */
  static void addTo(Column column, Trace trace) {
    trace.contradiction().ifPresent(clash -> column.add(new ContradictionBox(clash)));
    trace
        .secondFault()
        .map(SecondFault::text)
        .ifPresent(text -> column.add(new RemarkBox("Two things may be wrong at once", text)));
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(Palette.CHOSEN.color());
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setColor(Palette.INK.color());
    g.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    super.paintComponent(g);
  }
}
