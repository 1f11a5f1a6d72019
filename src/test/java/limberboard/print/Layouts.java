package limberboard.print;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import limberboard.print.pdf.ClosedUserAgent;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.picture.ScreenPictures;
import org.w3c.dom.Document;
import org.xhtmlrenderer.simple.XHTMLPanel;

/** Lays pages out as the window does, without a window. */
public final class Layouts {
  private static final int WIDTH = 700;

  private Layouts() {}

  /** How high the page gets at a usual width, in pixels. */
  public static int heightOf(Document document) {
    return panel(document, Pictures.none(), Look.LIGHT).getPreferredSize().height;
  }

  /** The page painted at a usual width. */
  public static BufferedImage painted(Document document, Pictures pictures, Look look) {
    XHTMLPanel panel = panel(document, pictures, look);
    panel.setSize(new Dimension(WIDTH, Math.max(1, panel.getPreferredSize().height)));
    BufferedImage image =
        new BufferedImage(panel.getWidth(), panel.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    panel.paintComponent(graphics);
    graphics.dispose();
    return image;
  }

  private static XHTMLPanel panel(Document document, Pictures pictures, Look look) {
    XHTMLPanel panel = new XHTMLPanel(new ClosedUserAgent());
    panel
        .getSharedContext()
        .setReplacedElementFactory(new ScreenPictures(source -> pictures.find(source, look)));
    panel.setSize(new Dimension(WIDTH, 100));
    panel.setDocument(document, null);
    BufferedImage image = new BufferedImage(WIDTH, 100, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    panel.doDocumentLayout(graphics);
    graphics.dispose();
    return panel;
  }
}
