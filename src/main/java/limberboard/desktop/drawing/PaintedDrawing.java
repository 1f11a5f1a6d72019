package limberboard.desktop.drawing;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;
import limberboard.print.picture.SvgPicture;

/**
 * A drawing painted once at the screen's own resolution and kept, so that pointing at zones does
 * not draw hundreds of lines anew each time.
 */
final class PaintedDrawing {
  private BufferedImage image;
  private DrawingFrame sheet;
  private double scale;

  void paint(SvgPicture drawing, DrawingFrame wanted, JComponent at, Graphics2D g) {
    AffineTransform device = g.getTransform();
    double now = device.getScaleX();
    if (image == null || !wanted.equals(sheet) || now != scale) {
      sheet = wanted;
      scale = now;
      image = draw(drawing, at);
    }
    g.drawImage(image, 0, 0, at.getWidth(), at.getHeight(), null);
  }

  private BufferedImage draw(SvgPicture drawing, JComponent at) {
    int width = Math.max(1, (int) Math.ceil(at.getWidth() * scale));
    int height = Math.max(1, (int) Math.ceil(at.getHeight() * scale));
    BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = drawn.createGraphics();
    g.scale(width / (double) at.getWidth(), height / (double) at.getHeight());
    g.translate(sheet.room().getX(), sheet.room().getY());
    drawing.paint(g, sheet.room().getWidth(), sheet.room().getHeight());
    g.dispose();
    return drawn;
  }
}
