package limberboard.desktop.trace;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JComponent;
import limberboard.desktop.look.Palette;

/** A chance as a bar, with a tick where it stood before the last answer. */
final class ChanceBar extends JComponent {
  private final double chance;
  private final double before;

  ChanceBar(double chance, double before) {
    this.chance = chance;
    this.before = before;
    setPreferredSize(new Dimension(10, com.formdev.flatlaf.util.UIScale.scale(9)));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    double w = getWidth() - 1.0;
    double h = getHeight() - 1.0;
    g2.setColor(Palette.LINE.color());
    g2.fill(new RoundRectangle2D.Double(0, 0, w, h, h, h));
    g2.setColor(Palette.ACCENT.color());
    g2.fill(new RoundRectangle2D.Double(0, 0, Math.max(h, w * chance), h, h, h));
    if (Math.abs(before - chance) >= 0.01) {
      g2.setColor(Palette.INK.color());
      g2.fillRect((int) Math.round(w * before) - 1, 0, 2, getHeight());
    }
    g2.dispose();
  }
}
