package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import limberboard.desktop.write.state.OpenPage;
import org.junit.jupiter.api.Test;

/** A symptom of the Write place as a table, through real keyboard events. */
class SymptomWindowTest extends RealWindow {
  private static final String SYMPTOM = "wet-locker";

  private static boolean focusIs(String name) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private Optional<OpenPage> page() {
    return desk().writePlace().model().current();
  }

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> focusIs(name));
  }

  @Test
  void whatIsFilledIntoTheTableStandsInTheTextAndIsUndoneThere() {
    window.ask(
        () -> {
          desk().go("write");
          desk().writePlace().model().open(SYMPTOM);
          return true;
        });
    untilFocused("write-text");
    String before = window.ask(() -> page().orElseThrow().text().plain());
    window.press(KeyEvent.VK_T, KeyEvent.VK_CONTROL);
    untilFocused("symptom-table");
    window.press(KeyEvent.VK_RIGHT);
    window.press(KeyEvent.VK_9);
    String now = before.replace("weight: 6", "weight: 9");
    window.until("the text says it", () -> page().orElseThrow().text().plain().equals(now));
    window.press(KeyEvent.VK_ESCAPE);
    untilFocused("write-text");
    JTextComponent text = window.ask(() -> window.find("write-text", JTextComponent.class));
    String shown = window.ask(text::getText);
    assertThat(shown).isEqualTo(now);
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until("it is undone", () -> page().orElseThrow().text().plain().equals(before));
  }
}
