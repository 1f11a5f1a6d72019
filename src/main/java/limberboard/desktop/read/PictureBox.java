package limberboard.desktop.read;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import limberboard.print.picture.Picture;
import limberboard.print.picture.SvgPicture;

/** A picture as a component that fills itself with it, keeping its proportions. */
public final class PictureBox extends JComponent {
  private static final double MOST = 1.25;
  private final transient Picture picture;

  /**
   * A picture.
   *
   * @param picture the picture
   * @param shows what it shows, in words
   */
  public PictureBox(Picture picture, String shows) {
    this.picture = picture;
    getAccessibleContext().setAccessibleName(shows);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessiblePicture();
    }
    return accessibleContext;
  }

  private final class AccessiblePicture extends AccessibleJComponent {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.ICON;
    }
  }

  @Override
  public Dimension getPreferredSize() {
    if (isPreferredSizeSet()) {
      return super.getPreferredSize();
    }
    double scale = getWidth() <= 0 ? 1 : Math.min(MOST, getWidth() / (double) picture.width());
    return new Dimension(
        (int) Math.round(picture.width() * scale), (int) Math.round(picture.height() * scale));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    double scale =
        Math.min(getWidth() / (double) picture.width(), getHeight() / (double) picture.height());
    double w = picture.width() * scale;
    double h = picture.height() * scale;
    g2.translate(0, (getHeight() - h) / 2);
    if (picture instanceof SvgPicture drawing) {
      drawing.paint(g2, w, h);
    } else {
      g2.drawImage(picture.image((int) w, (int) h), 0, 0, null);
    }
    g2.dispose();
  }
}
