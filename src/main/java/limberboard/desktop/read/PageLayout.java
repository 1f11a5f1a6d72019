package limberboard.desktop.read;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.Optional;
import limberboard.print.pdf.ClosedUserAgent;
import limberboard.print.picture.ScreenPictures;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.UserInterface;
import org.xhtmlrenderer.layout.BoxBuilder;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.layout.SharedContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.ViewportBox;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;
import org.xhtmlrenderer.swing.Java2DFontContext;

/** Lays pages out. Any thread, best not the event thread; a page by one thread at a time. */
final class PageLayout {
  private static final int ANY_HEIGHT = 1000;
  private static final UserInterface NOTHING_POINTED_AT =
      new UserInterface() {
        @Override
        public boolean isHover(Element element) {
          return false;
        }

        @Override
        public boolean isActive(Element element) {
          return false;
        }

        @Override
        public boolean isFocus(Element element) {
          return false;
        }
      };

  private PageLayout() {}

  /**
   * Lays a page out.
   *
   * @param rendered the page
   * @param width the room there is for it, in pixels, at least 1
   */
  static Laid of(Rendered rendered, int width) {
    SharedContext shared = new SharedContext(new ClosedUserAgent());
    shared.setPrint(false);
    shared.setInteractive(false);
    shared.setReplacedElementFactory(
        new ScreenPictures(address -> Optional.ofNullable(rendered.pictures().get(address))));
    shared.getTextRenderer().setSmoothingThreshold(0);
    shared.setBaseURL("page:");
    shared.setNamespaceHandler(new XhtmlNamespaceHandler());
    shared
        .getCss()
        .setDocumentContext(
            shared, shared.getNamespaceHandler(), rendered.document(), NOTHING_POINTED_AT);
    Graphics2D measuring = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    try {
      return layOut(shared, rendered, width, new Java2DFontContext(measuring));
    } finally {
      measuring.dispose();
    }
  }

  private static Laid layOut(
      SharedContext shared, Rendered rendered, int width, Java2DFontContext fonts) {
    Rectangle room = new Rectangle(0, 0, width, ANY_HEIGHT);
    shared.setTemporaryCanvas(room);
    LayoutContext context = shared.newLayoutContextInstance(fonts);
    shared.getTextRenderer().setup(fonts);
    BlockBox root = BoxBuilder.createRootBox(context, rendered.document());
    root.setContainingBlock(new ViewportBox(room));
    root.layout(context);
    Dimension size = root.getLayer().getPaintingDimension(context);
    return new Laid(width, size, TextCollector.of(root, context), shared, root.getLayer());
  }
}
