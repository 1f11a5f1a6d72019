package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.text.JTextComponent;
import limberboard.desktop.boats.Field;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Typing, undoing it, and the menu of text components, through real events. */
class TextHabitsWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int SHIFT = KeyEvent.VK_SHIFT;

  @BeforeEach
  void boats() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
  }

  private JTextComponent text(String name) {
    return window.find(name, JTextComponent.class);
  }

  private String words(String name) {
    return window.ask(() -> text(name).getText());
  }

  @Test
  void ctrlZUndoesTypingAndCtrlYAndCtrlShiftZDoItAgain() {
    window.focus("search");
    window.type("wet locker");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("search")).isEqualTo("wet");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("search")).isEmpty();
    window.press(KeyEvent.VK_Y, CTRL);
    assertThat(words("search")).isEqualTo("wet");
    window.press(KeyEvent.VK_Z, CTRL, SHIFT);
    assertThat(words("search")).isEqualTo("wet locker");
  }

  @Test
  void undoInAFieldTouchesNothingButThatField() {
    window.act(() -> desk().window().go(desk().place("boats")));
    window.focus("boat-NAME");
    window.press(KeyEvent.VK_END);
    window.type("y");
    window.focus("search");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("boat-NAME")).isEqualTo("Knoty");
    window.focus("boat-NAME");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("boat-NAME")).isEqualTo("Knot");
    assertThat(window.ask(() -> desk().boats().form().draft().text(Field.NAME))).isEqualTo("Knot");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("boat-NAME")).isEqualTo("Knot");
  }

  @Test
  void anotherBoatsTextInTheFieldCannotBeUndoneIntoTheOldOne() {
    window.act(() -> desk().window().go(desk().place("boats")));
    window.focus("boat-NAME");
    window.act(() -> desk().boats().open("stint"));
    window.until("her name is there", () -> text("boat-NAME").getText().equals("Stint"));
    window.focus("boat-NAME");
    window.press(KeyEvent.VK_Z, CTRL);
    assertThat(words("boat-NAME")).isEqualTo("Stint");
  }

  @Test
  void theMenuCutsPastesAndUndoes() {
    window.focus("search");
    window.type("gasket");
    window.press(KeyEvent.VK_A, CTRL);
    choose("Cut");
    assertThat(words("search")).isEmpty();
    choose("Paste");
    assertThat(words("search")).isEqualTo("gasket");
    choose("Undo");
    assertThat(words("search")).isEmpty();
    choose("Redo");
    assertThat(words("search")).isEqualTo("gasket");
    choose("Select all");
    assertThat(window.ask(() -> text("search").getSelectedText())).isEqualTo("gasket");
    choose("Copy");
  }

  private void choose(String title) {
    window.click(text("search"), MouseButton.RIGHT_BUTTON, 1);
    JMenuItem item = window.find("text-" + title, JMenuItem.class);
    window.click(item);
  }

  @Test
  void theMenuOpensByKeyboardAtTheCaret() {
    window.focus("search");
    window.press(KeyEvent.VK_F10, SHIFT);
    JPopupMenu menu = window.robot().findActivePopupMenu();
    assertThat(menu).isNotNull();
    assertThat(window.ask(() -> menu.getInvoker())).isSameAs(text("search"));
    window.press(KeyEvent.VK_ESCAPE);
  }
}
