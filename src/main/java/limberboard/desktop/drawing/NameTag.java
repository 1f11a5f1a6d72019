package limberboard.desktop.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import limberboard.desktop.look.Palette;

/** The name of a zone on a small tag: above the zone, or below where there is no room. */
final class NameTag {
  private static final int PAD = 7;
  private static final int AWAY = 6;

  private NameTag() {}

  static void paint(Graphics2D g, String name, Rectangle zone, Dimension room, Color ink) {
    FontMetrics metrics = g.getFontMetrics();
    int width = metrics.stringWidth(name) + 2 * PAD;
    int height = metrics.getHeight() + PAD;
    int x = within((int) zone.getCenterX() - width / 2, room.width - width - 2);
    int above = zone.y - height - AWAY;
    int y = above >= 2 ? above : within(zone.y + zone.height + AWAY, room.height - height - 2);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Palette.SHEET.color());
    g.fillRoundRect(x, y, width, height, PAD * 2, PAD * 2);
    g.setColor(Palette.ACCENT.color());
    g.setStroke(new BasicStroke(1.5f));
    g.drawRoundRect(x, y, width, height, PAD * 2, PAD * 2);
    g.setColor(ink);
    g.drawString(name, x + PAD, y + PAD / 2 + metrics.getAscent());
  }

  private static int within(int value, int most) {
    return Math.max(2, Math.min(value, most));
  }
}
