package limberboard.desktop.parts;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JViewport;
import limberboard.desktop.look.Palette;

/** A column on a sheet of its own, raised above the paper. */
public class RaisedColumn extends Column {
  private static final int ARC = 14;
  private static final int READABLE = 780;

  /**
   * An empty sheet.
   *
   * @param gap between components, in pixels
   */
  public RaisedColumn(int gap) {
    super(gap);
    padded(16, 18, 16, 18);
  }

  /**
   * An empty sheet whose text keeps to a readable width.
   *
   * @param gap between components, in pixels
   */
  public static RaisedColumn readable(int gap) {
    RaisedColumn sheet = new RaisedColumn(gap);
    sheet.atMost(READABLE);
    return sheet;
  }

  /** Fills the room there is, and scrolls when it needs more. */
  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() instanceof JViewport view && view.getHeight() > getPreferredSize().height;
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g2.setColor(Palette.SHEET.color());
    g2.fillRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
    g2.setColor(Palette.LINE.color());
    g2.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, ARC, ARC);
    g2.dispose();
    super.paintComponent(g);
  }
}
