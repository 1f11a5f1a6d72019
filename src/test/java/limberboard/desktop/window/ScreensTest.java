package limberboard.desktop.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScreensTest {
  /** The usable room of the screens named, the last one with twofold scaling. */
  @ParameterizedTest
  @CsvSource({"1024,700", "1280,800", "1920,1080", "960,540"})
  void aWindowLiesWithinItsScreenWhateverWasRemembered(int width, int height) {
    Rectangle room = new Rectangle(0, 0, width, height);
    for (Rectangle window :
        new Rectangle[] {
          new Rectangle(100, 60, 1280, 800),
          new Rectangle(-300, -200, 1000, 680),
          new Rectangle(width - 120, height - 120, 1200, 700),
          new Rectangle(0, 0, 2560, 1600)
        }) {
      assertThat(room.contains(Screens.fitted(window, room))).as("%s", window).isTrue();
    }
    Dimension least = Screens.least(MainWindow.LEAST, room);
    assertThat(least.width).isLessThanOrEqualTo(width);
    assertThat(least.height).isLessThanOrEqualTo(height);
  }

  @ParameterizedTest
  @CsvSource({"20,30,1100,700", "0,0,1280,800"})
  void aPlaceThatFitsIsKept(int x, int y, int width, int height) {
    Rectangle window = new Rectangle(x, y, width, height);
    assertThat(Screens.fitted(window, new Rectangle(0, 0, 1280, 800))).isEqualTo(window);
  }
}
