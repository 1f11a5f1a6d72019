package limberboard.print;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** A photograph or other picture made of pixels: PNG or JPEG. Immutable. */
public final class RasterPicture implements Picture {
  private static final long MOST_PIXELS = 50_000_000;

  private final BufferedImage pixels;

  private RasterPicture(BufferedImage pixels) {
    this.pixels = pixels;
  }

  /** The picture; empty when it cannot be read or has more than 50 million pixels. */
  static Optional<RasterPicture> read(byte[] bytes) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        long count = (long) reader.getWidth(0) * reader.getHeight(0);
        return count > MOST_PIXELS
            ? Optional.empty()
            : Optional.of(new RasterPicture(reader.read(0)));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public int width() {
    return pixels.getWidth();
  }

  @Override
  public int height() {
    return pixels.getHeight();
  }

  @Override
  public Image image(int width, int height) {
    return new SharpImage(width, height, this::scaled);
  }

  private Image scaled(int width, int height) {
    BufferedImage scaled = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    Graphics2D graphics = scaled.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(pixels, 0, 0, width, height, null);
    graphics.dispose();
    return scaled;
  }

  /** All its pixels. */
  BufferedImage pixels() {
    return pixels;
  }
}
