package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import limberboard.desktop.base.Notices.Notice;
import org.junit.jupiter.api.Test;

/** The window's keys, by the platform's habits. */
class KeysWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int SHIFT = KeyEvent.VK_SHIFT;

  private int text() {
    return window.ask(() -> desk().settings().textPercent());
  }

  private String notice() {
    return window.ask(() -> desk().notices().current().map(Notice::text).orElse(""));
  }

  @Test
  void everyWayToPressPlusMakesTextLarger() {
    window.press(KeyEvent.VK_EQUALS, CTRL);
    assertThat(text()).isEqualTo(115);
    window.press(KeyEvent.VK_EQUALS, CTRL, SHIFT);
    assertThat(text()).isEqualTo(130);
    window.press(KeyEvent.VK_ADD, CTRL);
    assertThat(text()).isEqualTo(150);
    window.press(KeyEvent.VK_MINUS, CTRL);
    assertThat(text()).isEqualTo(130);
    window.press(KeyEvent.VK_SUBTRACT, CTRL);
    assertThat(text()).isEqualTo(115);
    window.press(KeyEvent.VK_0, CTRL);
    assertThat(text()).isEqualTo(100);
  }

  @Test
  void printingWithNothingToPrintSaysSo() {
    window.act(() -> desk().window().go(desk().place("boats")));
    window.press(KeyEvent.VK_P, CTRL);
    assertThat(notice()).isEqualTo("There is nothing to print in Boats just now.");
  }

  @Test
  void ctrlLGoesToTheSearchField() {
    window.press(KeyEvent.VK_L, CTRL);
    assertThat(window.ask(() -> window.find("search", javax.swing.JComponent.class).isFocusOwner()))
        .isTrue();
  }
}
