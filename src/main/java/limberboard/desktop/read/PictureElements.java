package limberboard.desktop.read;

import java.util.Map;
import limberboard.print.Picture;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;
import org.xhtmlrenderer.swing.ImageReplacedElement;

/** Puts pictures that have been read in the place of their {@code img} elements. */
final class PictureElements implements ReplacedElementFactory {
  private Map<String, Picture> pictures = Map.of();

  void use(Map<String, Picture> read) {
    pictures = read;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext c, BlockBox box, UserAgentCallback agent, int cssWidth, int cssHeight) {
    Element element = box.getElement();
    if (element == null || !element.getNodeName().equals("img")) {
      return null;
    }
    Picture picture = pictures.get(element.getAttribute("src"));
    if (picture == null) {
      return null;
    }
    double wanted = cssWidth > 0 ? cssWidth : picture.width();
    double width = Math.min(wanted, room(box));
    double height =
        cssHeight > 0
            ? cssHeight * width / wanted
            : picture.height() * width / (double) picture.width();
    int wide = Math.max(1, (int) Math.round(width));
    int high = Math.max(1, (int) Math.round(height));
    return new ImageReplacedElement(picture.image(wide, high), wide, high);
  }

  private static double room(BlockBox box) {
    return box.getContainingBlock() == null || box.getContainingBlock().getContentWidth() <= 0
        ? Double.MAX_VALUE
        : box.getContainingBlock().getContentWidth();
  }

  @Override
  public void reset() {
    // nothing is kept
  }

  @Override
  public void remove(Element element) {
    // nothing is kept
  }

  @Override
  public void setFormSubmissionListener(FormSubmissionListener listener) {
    // pages have no forms
  }
}
