package limberboard.desktop.trace;

import java.awt.Graphics;
import limberboard.desktop.base.Wording;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.trace.Contradiction;

/** Says that answers do not go together, and which to check again. */
final class ContradictionBox extends Column {
  ContradictionBox(Contradiction clash) {
    super(4);
    padded(10, 14, 10, 14);
    add(Text.strong("These answers do not go together"));
    add(Text.plain(clash.text()));
    for (Contradiction.Against against : clash.against()) {
      add(
          Text.plain(
              "Look again at: "
                  + against.check().ask()
                  + " (answered: "
                  + Wording.answer(against.answer())
                  + ")"));
    }
    getAccessibleContext().setAccessibleName("These answers do not go together");
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
