package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A symptom's table in the Write place, in both themes: the table has room for some causes, and no
 * button is cut off. With {@code -Dsymptom.pictures=FOLDER} the pictures are kept there. Needs a
 * display.
 */
@Timeout(300)
class SymptomRoomTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private static final int LEAST_HEIGHT = 190;

  @ParameterizedTest
  @CsvSource({"1280,800,100,LIGHT", "1280,800,100,DARK"})
  void theTableHasRoom(int width, int height, int percent, ThemeChoice theme) throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(),
        "There is no display, so the room is not measured. Run: xvfb-run -a mvn verify");
    WindowPictures pictures =
        new WindowPictures(
            new WorkspaceFolders(Path.of("")), TODAY, new Dimension(width, height), percent);
    Painter painter =
        OnEventThread.get(() -> new Painter(pictures.desk(theme), new Dimension(width, height)));
    try {
      for (Scene scene : List.of(Scene.SYMPTOM_EDITOR_TABLE, Scene.SYMPTOM_EDITOR_TRY)) {
        OnEventThread.run(() -> painter.set(scene));
        painter.png();
        keep(scene, width, percent, theme, painter.png());
        OnEventThread.run(() -> look(painter.desk()));
      }
    } finally {
      OnEventThread.run(painter::close);
      OnEventThread.run(() -> Theme.apply(ThemeChoice.LIGHT, 100));
    }
  }

  private static void look(WindowAssembly desk) {
    JComponent place = desk.place("write").component();
    Component table =
        MeasuredWindow.all(place, JComponent.class).stream()
            .filter(each -> "symptom-table".equals(each.getName()))
            .findFirst()
            .orElseThrow();
    assertThat(table.getHeight()).isGreaterThan(LEAST_HEIGHT);
    for (AbstractButton button : MeasuredWindow.all(place, AbstractButton.class)) {
      Rectangle seen = button.getVisibleRect();
      if (button.getText() != null && !button.getText().isEmpty() && !seen.isEmpty()) {
        assertThat(seen.width).as(button.getText()).isEqualTo(button.getWidth());
      }
    }
  }

  private static void keep(Scene scene, int width, int percent, ThemeChoice theme, byte[] picture)
      throws IOException {
    String to = System.getProperty("symptom.pictures", "");
    if (!to.isEmpty()) {
      String size = width == 1280 && percent == 100 ? "" : "-" + width + "-" + percent;
      String name = scene.fileName() + size + "-" + theme.name().toLowerCase(Locale.ROOT);
      Files.createDirectories(Path.of(to));
      Files.write(Path.of(to).resolve(name + ".png"), picture);
    }
  }
}
