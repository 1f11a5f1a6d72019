package limberboard.print.pdf;

import limberboard.print.picture.Look;
import limberboard.print.picture.PictureElements;
import limberboard.print.picture.Pictures;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;

/** Puts the workspace's pictures into a PDF. For one document, on one thread. */
final class PdfPictures extends PictureElements {
  private final Pictures pictures;

  PdfPictures(Pictures pictures) {
    this.pictures = pictures;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    return source(box.getElement())
        .flatMap(source -> pictures.find(source, Look.PAPER))
        .map(picture -> new PdfPicture(picture, width, height, context.getDotsPerPixel()))
        .orElse(null);
  }
}
