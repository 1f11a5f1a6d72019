package limberboard.print.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.awt.image.MultiResolutionImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings and photographs. */
class SvgPictureTest {
  @TempDir Path folder;

  /** The middle of a surface of each colour, as it is painted in each look. */
  @ParameterizedTest
  @CsvSource({
    "#16324f, #16324f, #dce7f0",
    "#5B7389, #5b7389, #9db2c4",
    "#ffffff, #ffffff, #1b2a38",
    "#fff, #ffffff, #1b2a38",
    "#eef3f5, #eef3f5, #24374a",
    "#dfeaf0, #dfeaf0, #1d3d52",
    "#1f7a6d, #1f7a6d, #5cc2b1",
    "#c9b28a, #c9b28a, #8f7b56",
    "#c2571a, #c2571a, #f0915a",
    "#123456, #123456, #123456"
  })
  void drawingsTakeTheColoursOfTheLook(String colour, String light, String dark) {
    String svg = svg("<rect width='20' height='10' fill='" + colour + "'/>");
    assertThat(middle(svg, Look.LIGHT)).isEqualTo(Color.decode(light));
    assertThat(middle(svg, Look.PAPER)).isEqualTo(Color.decode(light));
    assertThat(middle(svg, Look.DARK)).isEqualTo(Color.decode(dark));
  }

  @Test
  void aNameThatOnlyBeginsLikeAColourStays() {
    String svg =
        svg(
            "<defs><linearGradient id='fff1'><stop stop-color='#123456'/></linearGradient></defs>"
                + "<rect width='20' height='10' fill='url(#fff1)'/>");
    assertThat(middle(svg, Look.DARK)).isEqualTo(Color.decode("#123456"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<svg",
        "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>",
        "<svg xmlns='http://www.w3.org/2000/svg' onload='x()'/>",
        "<svg xmlns='http://www.w3.org/2000/svg'><image href='http://127.0.0.1/a.png'/></svg>",
        "<svg xmlns='http://www.w3.org/2000/svg'><image href='data:image/png;base64,AA'/></svg>",
        "<!DOCTYPE svg [<!ENTITY a 'b'>]><svg xmlns='http://www.w3.org/2000/svg'>&a;</svg>",
        "<html/>",
        ""
      })
  void whatIsUnsafeOrNoDrawingIsNotShown(String svg) {
    assertThat(SvgPicture.parse(svg, Look.LIGHT)).isEmpty();
  }

  @Test
  void onScreenADrawingIsPaintedForTheScreensResolution() {
    String svg = svg("<rect width='10' height='10' fill='#123456'/>");
    Image image = SvgPicture.parse(svg, Look.LIGHT).orElseThrow().image(20, 10);
    assertThat(image.getWidth(null)).isEqualTo(20);
    BufferedImage sharp =
        (BufferedImage) ((MultiResolutionImage) image).getResolutionVariant(60, 30);
    assertThat(sharp.getWidth()).isEqualTo(60);
    assertThat(sharp.getRGB(29, 15)).isEqualTo(Color.decode("#123456").getRGB());
    assertThat(sharp.getRGB(31, 15)).isZero();
    assertThat(image.getWidth(null)).isEqualTo(20);
  }

  @Test
  void photographsAreShownAndOtherFilesAreNot() throws IOException {
    Path pictures = Files.createDirectories(folder.resolve("articles/pictures"));
    BufferedImage photo = new BufferedImage(30, 20, BufferedImage.TYPE_INT_RGB);
    ImageIO.write(photo, "png", pictures.resolve("photo.png").toFile());
    ImageIO.write(photo, "jpg", pictures.resolve("photo.jpg").toFile());
    ImageIO.write(photo, "gif", pictures.resolve("photo.gif").toFile());
    Files.writeString(pictures.resolve("broken.png"), "no picture");
    assertThat(find("photo.png")).get().extracting(Picture::width).isEqualTo(30);
    assertThat(find("photo.jpg")).get().extracting(Picture::height).isEqualTo(20);
    assertThat(find("photo.gif")).isEmpty();
    assertThat(find("broken.png")).isEmpty();
    assertThat(find("none.png")).isEmpty();
  }

  @Test
  void aPictureFitsBetweenTheMargins() {
    String svg = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 3000 1000'/>";
    SvgPicture picture = SvgPicture.parse(svg, Look.PAPER).orElseThrow();
    assertThat(PictureSize.onPage(picture)).isEqualTo(new PictureSize(600, 200));
  }

  private Optional<Picture> find(String name) {
    return Pictures.in(new WorkspaceFolders(folder)).find("articles/pictures/" + name, Look.LIGHT);
  }

  private static Color middle(String svg, Look look) {
    BufferedImage pixels = SvgPicture.parse(svg, look).orElseThrow().pixels(20, 10);
    return new Color(pixels.getRGB(10, 5));
  }

  private static String svg(String inside) {
    return "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 10' width='20' height='10'>"
        + inside
        + "</svg>";
  }
}
