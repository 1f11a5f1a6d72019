package limberboard.print;

import java.util.Optional;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;
import org.xhtmlrenderer.swing.ImageReplacedElement;

/** Puts the workspace's pictures into a page on screen, sharp at every scaling. */
public final class ScreenPictures implements ReplacedElementFactory {
  private final Pictures pictures;
  private final Look look;

  /**
   * Pictures in the colours of a look.
   *
   * @param pictures where pictures are read
   * @param look whose colours drawings get
   */
  public ScreenPictures(Pictures pictures, Look look) {
    this.pictures = pictures;
    this.look = look;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    return source(box.getElement())
        .flatMap(source -> pictures.find(source, look))
        .map(picture -> element(picture, width, height))
        .orElse(null);
  }

  /** Where a picture element's picture lies; empty for other elements. */
  static Optional<String> source(Element element) {
    return Optional.ofNullable(element)
        .filter(found -> found.getNodeName().equals("img"))
        .map(found -> found.getAttribute("src"));
  }

  private static ReplacedElement element(Picture picture, int width, int height) {
    int wide = width > 0 ? width : picture.width();
    int high = height > 0 ? height : picture.height();
    return new ImageReplacedElement(picture.image(wide, high), wide, high);
  }

  @Override
  public void reset() {
    // nothing is kept between documents
  }

  @Override
  public void remove(Element element) {
    // nothing is kept for an element
  }

  @Override
  public void setFormSubmissionListener(FormSubmissionListener listener) {
    // pages have no forms
  }
}
