package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The window where each of its pixels takes two by two of the screen. The build runs these in a
 * program of their own, started with that scaling.
 */
@Tag("twofold")
class TwofoldWindowTest {
  @TempDir Path folder;

  /** On a screen of 1920×1200 the window has 960×600 of its own pixels. */
  @ParameterizedTest
  @ValueSource(ints = {100, 150})
  void aNewBoatIsEnteredByKeyboardAlone(int percent) throws IOException {
    Memory memory = new Memory(new Forgetful());
    memory.remember("text-percent", Integer.toString(percent));
    try (SmallWindow window = SmallWindow.open(folder, memory)) {
      assertThat(scale(window)).as("screen pixels for one of the window").isEqualTo(2);
      assertThat(screen(window).contains(bounds(window))).as("within the screen").isTrue();
      BoatsWindowTest.enterANewBoat(window);
    }
  }

  private static double scale(SmallWindow window) {
    return window.ask(
        () ->
            window
                .desk()
                .window()
                .frame()
                .getGraphicsConfiguration()
                .getDefaultTransform()
                .getScaleX());
  }

  private static Rectangle screen(SmallWindow window) {
    return window.ask(() -> window.desk().window().frame().getGraphicsConfiguration().getBounds());
  }

  private static Rectangle bounds(SmallWindow window) {
    return window.ask(() -> window.desk().window().frame().getBounds());
  }
}
