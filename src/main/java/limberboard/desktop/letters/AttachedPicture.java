package limberboard.desktop.letters;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;

/** Reads a picture that came with a letter, made small while it is read. */
final class AttachedPicture {
  private static final long MOST_PIXELS = 200_000_000;
  private static final int LONGEST_SIDE = 1_200;

  private AttachedPicture() {}

  /**
   * The picture; empty where it is none that can be shown. Not for the event thread.
   *
   * @param bytes what the attachment holds
   */
  static Optional<BufferedImage> of(byte[] bytes) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      return readers.hasNext() ? read(readers.next(), in) : Optional.empty();
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<BufferedImage> read(ImageReader reader, ImageInputStream in)
      throws IOException {
    try {
      reader.setInput(in, true, true);
      int wide = reader.getWidth(0);
      int high = reader.getHeight(0);
      if ((long) wide * high > MOST_PIXELS) {
        return Optional.empty();
      }
      ImageReadParam small = reader.getDefaultReadParam();
      int every = Math.max(1, (Math.max(wide, high) + LONGEST_SIDE - 1) / LONGEST_SIDE);
      small.setSourceSubsampling(every, every, 0, 0);
      return Optional.of(reader.read(0, small));
    } finally {
      reader.dispose();
    }
  }
}
