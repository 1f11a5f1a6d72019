package limberboard.print.picture;

import java.util.Optional;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;

/**
 * What puts pictures in the place of {@code img} elements has in common, on screen and on paper.
 */
public abstract class PictureElements implements ReplacedElementFactory {
  /** Where a picture element's picture lies; empty for other elements. */
  protected static Optional<String> source(Element element) {
    return Optional.ofNullable(element)
        .filter(found -> found.getNodeName().equals("img"))
        .map(found -> found.getAttribute("src"));
  }

  @Override
  public final void reset() {
    // nothing is kept between documents
  }

  @Override
  public final void remove(Element element) {
    // nothing is kept for an element
  }

  @Override
  public final void setFormSubmissionListener(FormSubmissionListener listener) {
    // pages have no forms
  }
}
