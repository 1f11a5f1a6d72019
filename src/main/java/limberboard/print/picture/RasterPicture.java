package limberboard.print.picture;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import limberboard.library.picture.PixelCheck;

/** A photograph or other picture made of pixels: PNG or JPEG. Immutable. */
public final class RasterPicture implements Picture {
  /** Enough for the width of a page at 300 dots an inch, twice as high as wide. */
  private static final long KEPT_PIXELS = 8_000_000;

  private final BufferedImage pixels;
  private final int width;
  private final int height;

  private RasterPicture(PixelCheck.Pixels read) {
    this.pixels = read.image();
    this.width = read.width();
    this.height = read.height();
  }

  /** The picture; empty when it is broken or beyond the limits of {@link PixelCheck}. */
  static Optional<RasterPicture> read(byte[] bytes) {
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      return Optional.of(new RasterPicture(PixelCheck.read(in, KEPT_PIXELS)));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  @Override
  public int width() {
    return width;
  }

  @Override
  public int height() {
    return height;
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

  /** Its pixels, as many as were kept. */
  public BufferedImage pixels() {
    return pixels;
  }
}
