package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class AttachedPictureTest {
  private static byte[] png(int wide, int high) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB), "png", out);
    return out.toByteArray();
  }

  @Test
  void aLargePictureIsMadeSmallWhileItIsRead() throws IOException {
    BufferedImage shown = AttachedPicture.of(png(4_000, 3_000)).orElseThrow();
    assertThat(shown.getWidth()).isEqualTo(1_000);
    assertThat(shown.getHeight()).isEqualTo(750);
    assertThat(AttachedPicture.of(png(60, 40)).orElseThrow().getWidth()).isEqualTo(60);
  }

  @Test
  void whatIsNoPictureOrABrokenOneIsNotShown() throws IOException {
    assertThat(AttachedPicture.of("<svg/>".getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(AttachedPicture.of(new byte[0])).isEmpty();
    byte[] whole = png(300, 300);
    assertThat(AttachedPicture.of(Arrays.copyOf(whole, 30))).isEmpty();
  }

  /** The header alone says 30,000 times 30,000 pixels; nothing of that size is ever made. */
  @Test
  void aPictureThatWouldFillTheMemoryIsNotShown() throws IOException {
    byte[] bytes = png(300, 300);
    byte[] side = {0, 0, 0x75, 0x30};
    System.arraycopy(side, 0, bytes, 16, 4);
    System.arraycopy(side, 0, bytes, 20, 4);
    assertThat(AttachedPicture.of(bytes)).isEmpty();
  }
}
