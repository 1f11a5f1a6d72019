package limberboard.library.picture;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/**
 * Looks into pictures made of pixels, PNG and JPEG: how large they are before they are decoded, and
 * whether they are whole. Decoding takes little memory whatever the picture's size: only every so
 * many pixels are kept.
 */
public final class PixelCheck {
  /** The most pixels a picture may have: more than a camera's 24 million are never needed. */
  public static final long MOST_PIXELS = 25_000_000;

  /** The most pixels on one side. */
  public static final int LONGEST_SIDE = 10_000;

  private static final int FEW_PIXELS = 10_000;
  private static final int JPEG = 0xffd8;
  private static final int SCAN = 0xffda;
  private static final int END = 0xffd9;

  private PixelCheck() {}

  /** What is wrong with the picture, empty when it may be shown. */
  static Optional<String> wrong(Path picture) {
    try (ImageInputStream in = ImageIO.createImageInputStream(picture.toFile())) {
      read(in, FEW_PIXELS);
      return isCut(Files.readAllBytes(picture))
          ? Optional.of("is cut short; save it again as PNG or JPEG")
          : Optional.empty();
    } catch (Unfit e) {
      return Optional.ofNullable(e.getMessage());
    } catch (IOException | RuntimeException e) {
      return Optional.of("is broken or cut short; save it again as PNG or JPEG");
    }
  }

  /** A picture that must not be shown; the message says why. */
  private static final class Unfit extends IOException {
    @java.io.Serial private static final long serialVersionUID = 1L;

    Unfit(String message) {
      super(message);
    }
  }

  /**
   * A decoded picture.
   *
   * @param image its pixels, of which some may have been left out
   * @param width how many pixels wide it is in its file
   * @param height how many pixels high it is in its file
   */
  public record Pixels(BufferedImage image, int width, int height) {}

  /**
   * Decodes a picture, leaving pixels out evenly so that about so many are kept at most.
   *
   * @throws IOException when it is broken, cut short or beyond the limits
   */
  public static Pixels read(ImageInputStream in, long pixels) throws IOException {
    Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
    if (!readers.hasNext()) {
      throw new Unfit("is no PNG or JPEG, whatever its name says");
    }
    ImageReader reader = readers.next();
    try {
      reader.setInput(in, true, true);
      return decoded(reader, pixels);
    } finally {
      reader.dispose();
    }
  }

  private static Pixels decoded(ImageReader reader, long pixels) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if (width > LONGEST_SIDE || height > LONGEST_SIDE || (long) width * height > MOST_PIXELS) {
      throw new Unfit(
          "has "
              + width
              + " by "
              + height
              + " pixels; no more than "
              + LONGEST_SIDE
              + " on a side and "
              + MOST_PIXELS
              + " in all are shown, so save it smaller");
    }
    ImageReadParam how = reader.getDefaultReadParam();
    int step = (int) Math.max(1, Math.ceil(Math.sqrt((double) width * height / pixels)));
    how.setSourceSubsampling(step, step, 0, 0);
    return new Pixels(reader.read(0, how), width, height);
  }

  /** Whether a JPEG ends before its end is marked; decoders fill up what is missing in grey. */
  private static boolean isCut(byte[] file) {
    return file.length > 1 && at(file, 0) == JPEG && last(file, SCAN) > last(file, END);
  }

  private static int last(byte[] file, int mark) {
    int i = file.length - 2;
    while (i >= 0 && at(file, i) != mark) {
      i--;
    }
    return i;
  }

  private static int at(byte[] file, int i) {
    return (file[i] & 0xff) << Byte.SIZE | file[i + 1] & 0xff;
  }
}
