package limberboard.print.picture;

import java.util.Optional;
import java.util.function.Function;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.swing.ImageReplacedElement;

/** Puts pictures into a page on screen, sharp at every scaling and never wider than their room. */
public final class ScreenPictures extends PictureElements {
  private final Function<String, Optional<Picture>> pictures;

  /**
   * Pictures on screen.
   *
   * @param pictures gives the picture of an address in the XHTML, empty when there is none to show
   */
  public ScreenPictures(Function<String, Optional<Picture>> pictures) {
    this.pictures = pictures;
  }

  @Override
  public ReplacedElement createReplacedElement(
      LayoutContext context, BlockBox box, UserAgentCallback agent, int width, int height) {
    return source(box.getElement())
        .flatMap(pictures)
        .map(picture -> element(picture, width, height, room(box)))
        .orElse(null);
  }

  private static ReplacedElement element(
      Picture picture, int cssWidth, int cssHeight, double room) {
    double wanted = cssWidth > 0 ? cssWidth : picture.width();
    double width = Math.min(wanted, room);
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
}
