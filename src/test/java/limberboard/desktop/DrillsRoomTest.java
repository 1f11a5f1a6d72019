package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * In projector size the Drills place has text of at least 28 points, and no text is cut off: each
 * is as high as its lines and as wide as it may be, and can be scrolled to. Needs a display.
 */
class DrillsRoomTest {
  private static final int LEAST_POINTS = 28;
  private static MeasuredWindow window;
  private static WindowAssembly desk;

  @BeforeAll
  static void open() throws IOException {
    window = MeasuredWindow.open(new Dimension(1280, 800), "the window");
    desk = window.desk();
  }

  @AfterAll
  static void close() throws IOException {
    if (window != null) {
      window.close();
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

  private static List<String> cut() {
    List<String> cut = new ArrayList<>();
    JComponent place = desk.place("drills").component();
    for (Wrapped text : MeasuredWindow.all(place, Wrapped.class)) {
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
    for (AbstractButton button : MeasuredWindow.all(place, AbstractButton.class)) {
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
    window.settle(4);
    assertThat(OnEventThread.get(() -> desk.settings().textPercent())).isEqualTo(200);
    assertThat(OnEventThread.get(DrillsRoomTest::cut)).isEmpty();
    assertThat(
            OnEventThread.get(
                () -> MeasuredWindow.all(desk.place("drills").component(), Wrapped.class)))
        .isNotEmpty();
  }
}
