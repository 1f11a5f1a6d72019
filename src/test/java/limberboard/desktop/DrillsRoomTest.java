package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * In projector size the Drills place has text of at least 28 points, and no text is cut off: each
 * is as high as its lines and as wide as it may be, and can be scrolled to. Needs a display.
 */
class DrillsRoomTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private static final int LEAST_POINTS = 28;
  private static Painter painter;
  private static WindowAssembly desk;

  @BeforeAll
  static void open() throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(),
        "There is no display, so the window is not measured. Run: xvfb-run -a mvn verify");
    Dimension size = new Dimension(1280, 800);
    WindowPictures pictures =
        new WindowPictures(new WorkspaceFolders(Path.of("")), TODAY, size, 100);
    desk = OnEventThread.get(() -> pictures.desk(ThemeChoice.LIGHT));
    painter = OnEventThread.get(() -> new Painter(desk, size));
  }

  @AfterAll
  static void close() throws IOException {
    if (painter != null) {
      OnEventThread.run(painter::close);
      OnEventThread.run(() -> Theme.apply(ThemeChoice.LIGHT, 100));
    }
  }

  static Stream<Arguments> scenes() {
    return Stream.of(new Dimension(1280, 800), new Dimension(1920, 1080))
        .flatMap(
            size ->
                Stream.of(Scene.values())
                    .filter(scene -> scene.name().startsWith("DRILLS"))
                    .map(scene -> Arguments.of(scene, size.width, size.height)));
  }

  private static <C extends Component> List<C> all(Container within, Class<C> kind) {
    List<C> found = new ArrayList<>();
    for (Component each : within.getComponents()) {
      if (kind.isInstance(each) && each.isShowing()) {
        found.add(kind.cast(each));
      }
      if (each instanceof Container nested) {
        found.addAll(all(nested, kind));
      }
    }
    return found;
  }

  private static List<String> cut() {
    List<String> cut = new ArrayList<>();
    JComponent place = desk.place("drills").component();
    for (Wrapped text : all(place, Wrapped.class)) {
      Rectangle seen = text.getVisibleRect();
      boolean scrolls = SwingUtilities.getAncestorOfClass(JViewport.class, text) != null;
      boolean high = text.getHeight() >= text.getPreferredSize().height;
      boolean whole = scrolls || seen.height >= text.getHeight() && seen.width >= text.getWidth();
      boolean wide = seen.isEmpty() || seen.width == text.getWidth();
      if (!text.getText().isEmpty() && !(high && whole && wide)) {
        cut.add(text.getText() + " " + text.getBounds() + " seen " + seen);
      }
      if (text.getFont().getSize() < LEAST_POINTS) {
        cut.add("small: " + text.getText() + " " + text.getFont().getSize());
      }
    }
    for (AbstractButton button : all(place, AbstractButton.class)) {
      boolean scrolls = SwingUtilities.getAncestorOfClass(JViewport.class, button) != null;
      Rectangle seen = button.getVisibleRect();
      boolean whole =
          scrolls || seen.width == button.getWidth() && seen.height == button.getHeight();
      if (!button.getText().isEmpty()
          && !(whole && button.getWidth() >= button.getPreferredSize().width)) {
        cut.add("button " + button.getText() + " " + button.getBounds() + " seen " + seen);
      }
    }
    return cut;
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void nothingIsCutOffInProjectorSize(Scene scene, int width, int height) throws IOException {
    OnEventThread.run(
        () -> {
          scene.set(desk);
          desk.drillsPlace().project(true);
          desk.window().frame().setSize(width, height);
        });
    for (int turn = 0; turn < 4; turn++) {
      OnEventThread.run(() -> desk.window().frame().getRootPane().revalidate());
      OnEventThread.run(() -> desk.window().frame().validate());
      painter.png();
    }
    assertThat(OnEventThread.get(() -> desk.settings().textPercent())).isEqualTo(200);
    assertThat(OnEventThread.get(DrillsRoomTest::cut)).isEmpty();
    assertThat(OnEventThread.get(() -> all(desk.place("drills").component(), Wrapped.class)))
        .isNotEmpty();
  }
}
