package limberboard.print.picture;

import java.awt.Image;
import java.awt.image.AbstractMultiResolutionImage;
import java.util.List;

/** An image that is drawn anew for the resolution of the screen it is shown on. */
final class SharpImage extends AbstractMultiResolutionImage {
  private static final int MOST_PIXELS_A_SIDE = 8192;

  /** Draws an image of exactly this size. */
  interface Drawing {
    /** The image. */
    Image at(int width, int height);
  }

  private final int width;
  private final int height;
  private final Drawing drawing;
  private Image last;

  SharpImage(int width, int height, Drawing drawing) {
    this.width = width;
    this.height = height;
    this.drawing = drawing;
    this.last = drawing.at(width, height);
  }

  @Override
  protected Image getBaseImage() {
    return last(width, height);
  }

  @Override
  public synchronized Image getResolutionVariant(double wide, double high) {
    return last(pixels(wide), pixels(high));
  }

  @Override
  public List<Image> getResolutionVariants() {
    return List.of(getBaseImage());
  }

  private synchronized Image last(int wide, int high) {
    if (last.getWidth(null) != wide || last.getHeight(null) != high) {
      last = drawing.at(wide, high);
    }
    return last;
  }

  private static int pixels(double length) {
    return (int) Math.max(1, Math.min(MOST_PIXELS_A_SIDE, Math.ceil(length)));
  }
}
