package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.Test;

/** Workings of the Upkeep place through real mouse and keyboard events. */
class WorkingsWindowTest extends RealWindow {
  private String flow() {
    return window.ask(() -> window.find("sum-result-flow", Wrapped.class).getText());
  }

  private boolean isSaid(String what) {
    return window.showing().stream()
        .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what));
  }

  /** 0.6 × π/4 × (0.02 m)² × √(2 × 9.80665 × 0.5) = 0.5903 l/s; (0.04 m)² gives four times that. */
  @Test
  void aSumFollowsWhatIsTypedAndKeepsIt() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.press(KeyEvent.VK_W, KeyEvent.VK_ALT);
    window.focus("sums");
    CardList<?> sums = window.find("sums", CardList.class);
    for (int i = 0; i < 20 && !isSaid("How fast does water come in"); i++) {
      window.press(KeyEvent.VK_DOWN);
    }
    assertThat(flow()).isEqualTo("35.4 l/min");
    window.press(KeyEvent.VK_F6);
    assertThat(window.ask(() -> window.find("sum-diameter", JTextField.class).isFocusOwner()))
        .isTrue();
    window.act(() -> window.find("sum-diameter", JTextField.class).selectAll());
    window.type("40");
    assertThat(flow()).isEqualTo("142 l/min");
    window.act(() -> window.find("sum-diameter", JTextField.class).selectAll());
    window.type("wide");
    assertThat(isSaid("This is no number")).isTrue();
    assertThat(isSaid("142 l/min")).isFalse();
    window.act(() -> window.find("sum-diameter", JTextField.class).selectAll());
    window.type("4");
    window.focus("sum-diameter-unit");
    window.press(KeyEvent.VK_DOWN);
    assertThat(flow()).isEqualTo("142 l/min");
    window.act(() -> sums.setSelectedIndex(0));
    assertThat(isSaid("35.4 l/min")).isFalse();
    window.act(() -> sums.setSelectedIndex(5));
    assertThat(flow()).isEqualTo("142 l/min");
    assertThat(
            window.ask(() -> window.find("sum-diameter-unit", JComboBox.class).getSelectedIndex()))
        .isEqualTo(1);
    window.click("sum-reset");
    assertThat(flow()).isEqualTo("35.4 l/min");
  }
}
