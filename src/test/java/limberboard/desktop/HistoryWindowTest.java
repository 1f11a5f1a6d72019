package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JList;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.Test;

/** The history of a page by keyboard alone: begun, looked at, restored. */
class HistoryWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;

  private boolean says(String what) {
    return window.showing().stream()
        .filter(Wrapped.class::isInstance)
        .anyMatch(each -> ((Wrapped) each).getText().contains(what));
  }

  private static boolean hasFocus(String name) {
    Component owner =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> hasFocus(name));
  }

  private int versions() {
    return window.find("history-versions", JList.class).getModel().getSize();
  }

  @Test
  void isBegunLookedAtAndRestoredByKeyboard() throws IOException {
    Path page = window.folders().articles().resolve("procedures/seal-vent.md");
    String first = Files.readString(page);
    window.act(() -> desk().navigator().openPage("seal-vent"));
    untilFocused("page");
    window.press(KeyEvent.VK_H, CTRL);
    untilFocused("history-begin");
    assertThat(says("This workspace has no history yet")).isTrue();
    window.press(KeyEvent.VK_ENTER);
    window.until("it asks who records", () -> window.shows("who-name"));
    untilFocused("who-name");
    window.type("Ada");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is read", () -> window.shows("history-versions"));
    assertThat(versions()).isEqualTo(1);

    Files.writeString(page, first.replaceFirst("\\n---\\n", "\n---\n\nLook twice.\n"));
    window.act(() -> desk().navigator().openPage("seal-vent"));
    untilFocused("page");
    window.press(KeyEvent.VK_H, CTRL);
    window.until("the change is seen", () -> says("changes that are in no version yet"));
    window.focus("history-versions");
    window.press(KeyEvent.VK_RIGHT);
    window.until("what changed since is shown", () -> window.words("page").contains("Look twice."));
    window.focus("history-restore");
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "it asks first",
        () ->
            window.robot().finder().findAll(javax.swing.JDialog.class::isInstance).stream()
                .anyMatch(Component::isShowing));
    assertThat(Files.readString(page)).contains("Look twice.");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is restored", () -> versions() == 3);
    assertThat(Files.readString(page)).isEqualTo(first);
  }
}
