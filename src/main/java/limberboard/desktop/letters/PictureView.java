package limberboard.desktop.letters;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A picture as wide as there is room, and never wider than it is. */
final class PictureView extends JComponent {
  private static final int LEAST = 40;
  private final transient BufferedImage picture;

  PictureView(BufferedImage picture, String name) {
    this.picture = picture;
    getAccessibleContext().setAccessibleName("Picture " + name);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessiblePicture();
    }
    return accessibleContext;
  }

  /** A picture for those who listen. */
  private final class AccessiblePicture extends AccessibleJComponent {

    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.ICON;
    }
  }

  private int shownWidth() {
    int room = getWidth() <= 0 ? picture.getWidth() : getWidth();
    return Math.max(LEAST, Math.min(room, picture.getWidth()));
  }

  @Override
  public Dimension getPreferredSize() {
    int width = shownWidth();
    return new Dimension(width, Math.max(1, picture.getHeight() * width / picture.getWidth()));
  }

  @Override
  protected void paintComponent(Graphics g) {
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    int width = shownWidth();
    g2.drawImage(picture, 0, 0, width, picture.getHeight() * width / picture.getWidth(), null);
    g2.dispose();
  }
}
