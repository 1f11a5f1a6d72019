package limberboard.print.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures are read once for as long as their file stays as it is, and a broken one is told. */
class PicturesTest {
  private static final String SVG =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><rect width=\"9\"/></svg>";
  private static final String PATH = "articles/pictures/hatch.svg";

  @TempDir Path folder;
  private Pictures pictures;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectories(folder.resolve("articles/pictures"));
    Files.writeString(folder.resolve(PATH), SVG);
    pictures = Pictures.in(new WorkspaceFolders(folder));
  }

  @Test
  void isReadOnceUntilItsFileChanges() throws IOException {
    Picture first = pictures.find(PATH, Look.PAPER).orElseThrow();
    assertThat(pictures.find(PATH, Look.PAPER).orElseThrow()).isSameAs(first);
    assertThat(pictures.find(PATH, Look.DARK).orElseThrow()).isNotSameAs(first);
    String before = pictures.state(PATH);
    Files.setLastModifiedTime(folder.resolve(PATH), FileTime.from(Instant.EPOCH));
    assertThat(pictures.state(PATH)).isNotEqualTo(before);
    assertThat(pictures.find(PATH, Look.PAPER).orElseThrow()).isNotSameAs(first);
  }

  @Test
  void aDrawingInThePageIsReadOnceToo() {
    String source = DrawnInPage.source(SVG);
    Picture first = pictures.find(source, Look.PAPER).orElseThrow();
    assertThat(pictures.find(source, Look.PAPER).orElseThrow()).isSameAs(first);
  }

  @Test
  void twoDrawingsWithTheSameNumberAreToldApart() {
    String before = SVG + "<!--" + " ".repeat((3 - (SVG.length() + 4) % 3) % 3);
    String one = DrawnInPage.source(before + "agN-->");
    String other = DrawnInPage.source(before + "aqt-->");
    assertThat(one).isNotEqualTo(other).hasSameHashCodeAs(other);
    Picture first = pictures.find(one, Look.PAPER).orElseThrow();
    assertThat(pictures.find(other, Look.PAPER).orElseThrow()).isNotSameAs(first);
  }

  @Test
  void aBrokenOneIsTold() throws IOException {
    Files.writeString(folder.resolve(PATH), "<svg");
    assertThat(pictures.find(PATH, Look.PAPER)).isEmpty();
    assertThat(pictures.wrong(PATH, Look.PAPER)).isPresent();
    assertThat(pictures.wrong("articles/pictures/none.svg", Look.PAPER)).contains("is not there");
  }
}
