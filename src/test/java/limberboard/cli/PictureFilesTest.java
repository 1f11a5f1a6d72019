package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import limberboard.library.TestWorkspace;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Broken, cut and hostile pictures: told by validate, framed on paper, and nothing else suffers.
 */
class PictureFilesTest {
  private static final Map<String, String> WRONG =
      Map.of(
          "huge.png", "20000 by 20000 pixels",
          "long.png", "9 by 1000000 pixels",
          "cut.png", "is broken or cut short",
          "cut.jpg", "is cut short; save it again",
          "text.png", "is no PNG or JPEG",
          "broken.svg", "is not well-formed XML",
          "blur.svg", "has a <filter>",
          "circle.svg", "uses itself");

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() throws IOException {
    workspace = new TestWorkspace(folder);
    Path pictures = folder.resolve("articles/pictures");
    Files.write(pictures.resolve("huge.png"), png(20_000, 20_000));
    Files.write(pictures.resolve("long.png"), png(9, 1_000_000));
    byte[] whole = picture("png");
    Files.write(pictures.resolve("whole.png"), whole);
    Files.write(pictures.resolve("cut.png"), Arrays.copyOf(whole, whole.length / 2));
    byte[] photograph = picture("jpg");
    Files.write(pictures.resolve("whole.jpg"), photograph);
    Files.write(pictures.resolve("cut.jpg"), Arrays.copyOf(photograph, photograph.length / 2));
    workspace.write("articles/pictures/text.png", "no picture");
    workspace.write("articles/pictures/broken.svg", "<svg xmlns='http://www.w3.org/2000/svg'>");
    svg("blur.svg", "<filter id='f'><feGaussianBlur stdDeviation='999999'/></filter>");
    svg("circle.svg", "<g id='a'><use href='#a'/></g>");
    StringBuilder body = new StringBuilder("---\ntitle: Pictures\n---\n");
    WRONG
        .keySet()
        .forEach(name -> body.append("![The " + name + "](../pictures/" + name + ")\n\n"));
    body.append("![W](../pictures/whole.png)\n\n![V](../pictures/whole.jpg)\n\nThe end.\n");
    workspace.write("articles/topics/pictures.md", body.toString());
  }

  private void svg(String name, String inside) {
    workspace.write(
        "articles/pictures/" + name,
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>" + inside + "</svg>");
  }

  private static byte[] picture(String format) throws IOException {
    BufferedImage image = new BufferedImage(200, 100, BufferedImage.TYPE_INT_RGB);
    Random noise = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      image.setRGB(i % 200, i / 200, noise.nextInt());
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  /** The head of a picture by the PNG specification, and nothing in its body. */
  private static byte[] png(int width, int height) {
    ByteBuffer head = ByteBuffer.allocate(17);
    head.put("IHDR".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    head.putInt(width).putInt(height).put(new byte[] {8, 2, 0, 0, 0});
    CRC32 check = new CRC32();
    check.update(head.array());
    return ByteBuffer.allocate(41)
        .put(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'})
        .putInt(13)
        .put(head.array())
        .putInt((int) check.getValue())
        .putInt(1000)
        .put("IDAT".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
        .array();
  }

  private String run(int expected, String... words) {
    return new TerminalRun(folder, LocalDate.of(2026, 4, 1)).run(words).ended(expected).out();
  }

  @Test
  void validateNamesEachWithWhatIsWrong() {
    String told = run(ExitCode.PROBLEMS, "validate");
    WRONG.forEach(
        (name, why) ->
            assertThat(told.lines().filter(line -> line.contains("/" + name)))
                .as(name)
                .anyMatch(
                    line -> line.startsWith("articles/topics/pictures.md") && line.contains(why)));
    assertThat(told).doesNotContain("whole.png").doesNotContain("whole.jpg");
  }

  @Test
  void onPaperAFramedNoteStandsInThePlaceOfEach() throws IOException {
    run(ExitCode.OK, "read", "pictures", "--pdf", "page.pdf");
    try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(folder.resolve("page.pdf")))) {
      String text = new PDFTextStripper().getText(pdf).replaceAll("[\\s\\u00A0]+", " ");
      WRONG.forEach(
          (name, why) ->
              assertThat(text).contains("[picture: The " + name + "; it ").contains(why));
      assertThat(text).contains("The end.").doesNotContain("[picture: W");
    }
  }
}
