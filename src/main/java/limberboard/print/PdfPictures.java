package limberboard.print;

import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;

/** Puts the workspace's pictures into a PDF. For one document, on one thread. */
final class PdfPictures implements ReplacedElementFactory {
  private final Pictures pictures;

  PdfPictures(Pictures pictures) {
    this.pictures = pictures;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    return ScreenPictures.source(box.getElement())
        .flatMap(source -> pictures.find(source, Look.PAPER))
        .map(picture -> new PdfPicture(picture, width, height, context.getDotsPerPixel()))
        .orElse(null);
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
