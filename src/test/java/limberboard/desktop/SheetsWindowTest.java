package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JComboBox;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.Test;

/** List, Shopping and Rigging of the Upkeep place through real mouse and keyboard events. */
class SheetsWindowTest extends RealWindow {
  private void goTo(int letter) {
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(LocalDate.of(2028, 3, 20)));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.press(letter, KeyEvent.VK_ALT);
  }

  private String page() {
    return window.words("page");
  }

  private void untilPageSays(String what) {
    window.until(
        "the sheet says " + what,
        () -> window.frame().target().isShowing() && showsPage() && page().contains(what));
  }

  private boolean showsPage() {
    return window.showing().stream().anyMatch(one -> "page".equals(one.getName()));
  }

  private Path saved(String name) throws IOException {
    Path file = folder.resolve(name);
    window.until(
        name + " is written",
        () -> desk().notices().current().filter(n -> n.text().contains(name)).isPresent());
    assertThat(file).exists();
    return file;
  }

  @Test
  void theListIsReadSavedAndKeepsItsChoice() throws IOException {
    goTo(KeyEvent.VK_I);
    untilPageSays("Replace the locker gasket");
    window.focus("list-pdf");
    window.press(KeyEvent.VK_ENTER);
    Path pdf = saved("fitting-out-knot-2028.pdf");
    assertThat(
            new String(Files.readAllBytes(pdf), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
    window.click("list-csv");
    assertThat(Files.readString(saved("fitting-out-knot-2028.csv"))).contains("replace-gasket");
    window.focus("list-kind");
    window.press(KeyEvent.VK_DOWN);
    window.until(
        "the other list is empty",
        () -> window.showing().stream().anyMatch(one -> says(one, "Laying up: nothing falls due")));
    window.press(KeyEvent.VK_U, KeyEvent.VK_ALT);
    assertThat(window.ask(() -> window.find("list-kind", JComboBox.class).getSelectedIndex()))
        .isEqualTo(1);
  }

  private static boolean says(java.awt.Component one, String what) {
    return one instanceof Wrapped text && text.getText().startsWith(what);
  }

  @Test
  void workIsTakenOffTheShoppingListWithTheKeyboardAndPutOnAgainWithTheMouse() throws IOException {
    goTo(KeyEvent.VK_S);
    untilPageSays("1 × reel of 5 m");
    window.focus("shop-replace-gasket");
    window.press(KeyEvent.VK_SPACE);
    window.until(
        "nothing is shopped for",
        () -> window.showing().stream().anyMatch(one -> says(one, "No work is chosen")));
    window.click("shop-replace-gasket");
    untilPageSays("1 × reel of 5 m");
    window.click("shopping-csv");
    assertThat(Files.readString(saved("shopping-knot-2028.csv"))).contains("gasket-strip");
  }

  @Test
  void theRopesAreReadAndSaved() throws IOException {
    goTo(KeyEvent.VK_R);
    untilPageSays("Main halyard");
    window.click("rigging-csv");
    assertThat(Files.readString(saved("rigging-knot.csv"))).contains("main-halyard");
    window.act(() -> desk().session().choose(Optional.of("stint")));
    window.until(
        "the barge has no ropes",
        () ->
            window.showing().stream()
                .anyMatch(one -> one instanceof Wrapped t && t.getText().contains("no ropes")));
  }
}
