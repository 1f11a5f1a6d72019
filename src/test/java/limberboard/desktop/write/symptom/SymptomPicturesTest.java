package limberboard.desktop.write.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import limberboard.desktop.look.ThemeChoice;
import limberboard.library.page.Kind;
import limberboard.writing.PageText;
import limberboard.writing.start.BegunPage;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * The symptom's editor in its usual states, in both themes. With {@code -Dsymptom.pictures=FOLDER}
 * the pictures are kept there; {@code -Dsymptom.size=1024x700} and {@code -Dsymptom.text=150} make
 * others.
 */
@Timeout(300)
class SymptomPicturesTest {
  private static final String OUTLINE =
      """
      Causes
      The gasket of the lid is flat (6, replace-locker-gasket)
      The drain of the locker is blocked (4)
      A screw of the cleat lets rain through

      Checks
      Is it wet after rain without sailing? yes, no (1 minute)
        how: Look after a wet night at the mooring.
        yes: gasket usually, screw usually
      Where is it wettest? below the lid, at the back (2)
      """;

  private static final String PAGE = "clutch-slips";

  private static Dimension size() {
    String[] size = System.getProperty("symptom.size", "1280x800").split("x");
    return new Dimension(Integer.parseInt(size[0]), Integer.parseInt(size[1]));
  }

  @Test
  void everyStateIsPainted(@TempDir Path folder) throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(), "There is no display, so no pictures are made.");
    int percent = Integer.getInteger("symptom.text", 100);
    for (ThemeChoice theme : ThemeChoice.values()) {
      try (SymptomFrame frame = new SymptomFrame(folder, size(), theme, percent)) {
        PageText begun = BegunPage.of(Kind.SYMPTOM, "The cockpit locker is wet", "wet").text();
        frame.show("wet", begun);
        frame.ask(
            () -> {
              frame.model().outline(OUTLINE);
              return true;
            });
        keep(frame, "outline", theme);
        frame.ask(() -> frame.model().makeTable());
        frame.settle();
        keep(frame, "begun", theme);
        frame.show(PAGE);
        frame.settle();
        keep(frame, "table", theme);
        frame.ask(
            () -> {
              frame.panel().look(true);
              frame.panel().tryFirst();
              return true;
            });
        frame.settle();
        keep(frame, "try", theme);
        assertThat(frame.failures()).isEmpty();
        assertThat(frame.ask(() -> frame.model().tried())).isNotEmpty();
      }
    }
  }

  private static void keep(SymptomFrame frame, String state, ThemeChoice theme) throws IOException {
    BufferedImage picture = frame.picture();
    assertThat(picture.getWidth()).isEqualTo(size().width);
    String to = System.getProperty("symptom.pictures", "");
    if (!to.isEmpty()) {
      Files.createDirectories(Path.of(to));
      String name = "symptom-editor-" + state + "-" + theme.name().toLowerCase(Locale.ROOT);
      ImageIO.write(picture, "png", Path.of(to).resolve(name + ".png").toFile());
    }
  }
}
