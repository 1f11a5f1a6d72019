package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Notices.Notice;
import limberboard.desktop.help.Guide;
import org.junit.jupiter.api.Assumptions;
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
  void ctrlNEntersANewBoat() {
    window.press(KeyEvent.VK_N, CTRL);
    window.until("the form of a new boat is there", () -> desk().boats().form().isNew());
  }

  @Test
  void f5ReadsTheFilesAgain() throws IOException {
    Path note = window.folders().boats().resolve("knot/boat.yaml");
    Files.writeString(note, Files.readString(note).replace("name: Knot", "name: Knotty"));
    window.press(KeyEvent.VK_F5);
    window.until(
        "her new name is there",
        () ->
            desk().session().workspace().boat("knot").map(boat -> boat.name()).stream()
                .anyMatch("Knotty"::equals));
  }

  @Test
  void ctrlWClosesTheWindow() {
    window.press(KeyEvent.VK_W, CTRL);
    window.until("the window is gone", () -> !desk().window().frame().isDisplayable());
  }

  @Test
  void f10OpensTheMenu() {
    window.press(KeyEvent.VK_F10);
    assertThat(window.robot().findActivePopupMenu()).isNotNull();
    window.press(KeyEvent.VK_ESCAPE);
  }

  @Test
  void f1OpensTheGuideAtThePlace() {
    Assumptions.assumeFalse(
        Guide.packed().parts().isEmpty(), "Only Maven packs the guide; this build has none.");
    window.act(() -> desk().window().go(desk().place("upkeep")));
    window.press(KeyEvent.VK_F1);
    window.until(
        "the part about upkeep is shown",
        () -> desk().place("help").subject().equals(Optional.of("Help: Upkeep")));
    assertThat(window.ask(() -> desk().window().frame().getTitle())).startsWith("Help: Upkeep");
  }

  @Test
  void theTitleSaysPlaceBoatAndWorkspace() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.act(() -> desk().window().go(desk().place("boats")));
    assertThat(window.ask(() -> desk().window().frame().getTitle()))
        .contains("Knot")
        .contains(window.folders().root().getFileName().toString())
        .endsWith("Limberboard");
    assertThat(window.ask(() -> desk().window().frame().getIconImages())).hasSizeGreaterThan(4);
  }

  @Test
  void ctrlLGoesToTheSearchField() {
    window.press(KeyEvent.VK_L, CTRL);
    assertThat(window.ask(() -> window.find("search", javax.swing.JComponent.class).isFocusOwner()))
        .isTrue();
  }
}
