package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTextField;
import limberboard.boat.Boat;
import limberboard.desktop.boats.Field;
import limberboard.desktop.find.Found;
import limberboard.desktop.trace.Stage;
import org.junit.jupiter.api.Test;

/** Finding the boat from the search field and the chooser, through real events. */
class FindBoatWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;

  private String boat() {
    return window.ask(() -> desk().session().boat().map(Boat::id).orElse(""));
  }

  private void search(String text) {
    window.press(KeyEvent.VK_L, CTRL);
    window.type(text);
    found();
  }

  private void paste(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
    window.press(KeyEvent.VK_L, CTRL);
    window.press(KeyEvent.VK_V, CTRL);
    found();
  }

  private void found() {
    window.until(
        "what was typed is found",
        () -> desk().search().isUpToDate() && !desk().search().found().isEmpty());
  }

  private Found.Target first() {
    return window.ask(() -> desk().search().found().get(0).target());
  }

  @Test
  void aNameChoosesTheWorkingBoatEverywhere() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    search("stint");
    window.press(KeyEvent.VK_ENTER);
    window.until("she is the working boat", () -> boat().equals("stint"));
    assertThat(window.ask(() -> desk().boats().form().original().map(Boat::id))).contains("stint");
    assertThat(window.ask(() -> desk().trace().fitting().map(f -> f.boat().id())))
        .contains("stint");
    assertThat(window.ask(() -> desk().upkeep().boat().map(Boat::id))).contains("stint");
    assertThat(window.find("boat-chooser", JComboBox.class).getSelectedItem().toString())
        .startsWith("Stint");
  }

  @Test
  void theHullNumberFindsHer() {
    search("hull 7");
    window.press(KeyEvent.VK_ENTER);
    window.until("she is the working boat", () -> boat().equals("knot"));
  }

  @Test
  void aPastedLetterOffersTheBoatAndKeepsWhatWasFound() {
    paste(
        "Dear yard,\nthe locker of our Stint is wet after every sail and there is water below the"
            + " boards.\nWhat should we look at?\nRegards");
    assertThat(first()).isEqualTo(new Found.MentionedBoat("stint"));
    assertThat(boat()).isEmpty();
    window.press(KeyEvent.VK_ENTER);
    window.until("she is the working boat", () -> boat().equals("stint"));
    window.until(
        "the hits are for her",
        () -> desk().search().isUpToDate() && !(first() instanceof Found.MentionedBoat));
    window.until(
        "the hits are still there",
        () -> window.showing().stream().anyMatch(component -> "hits".equals(component.getName())));
    assertThat(window.ask(() -> window.find("search", JTextField.class).isFocusOwner())).isTrue();
  }

  @Test
  void aBoatThatNobodyEnteredCanBeTracedFromTheSearchField() throws Exception {
    search("a Dinghy 18 of 2015");
    window.press(KeyEvent.VK_ENTER);
    window.until("she is the working boat", () -> boat().equals("a dinghy of 2015"));
    window.until("a symptom can be chosen", () -> desk().trace().stage() == Stage.CHOOSING);
    window.act(() -> desk().navigator().trace("wet-locker"));
    window.until("the trace has begun", () -> desk().trace().trace().isPresent());
    assertThat(Files.list(window.folders().boats()).map(p -> p.getFileName().toString()))
        .containsExactlyInAnyOrder("knot", "stint");
  }

  @Test
  void enteringHerBeginsWithWhatIsKnownOfHer() {
    window.act(() -> desk().session().choose(Optional.of("a dinghy of 2015 with vent-fitted")));
    assertThat(window.ask(() -> desk().boats().form().original().map(Boat::isEntered)))
        .contains(true);
    window.act(() -> desk().navigator().newBoat());
    window.until("the form of a new boat is there", () -> desk().boats().form().isNew());
    assertThat(window.ask(() -> desk().boats().form().draft().text(Field.BUILT))).isEqualTo("2015");
    assertThat(window.ask(() -> desk().boats().form().draft().text(Field.NAME))).isEmpty();
    assertThat(window.ask(() -> desk().boats().form().draft().equipment().get("vent")))
        .isEqualTo("vent-fitted");
    window.act(() -> desk().boats().dropChanges());
  }

  @Test
  void movingThroughTheOpenListChoosesNothingUntilEnter() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    JComboBox<?> chooser = window.find("boat-chooser", JComboBox.class);
    window.focus("boat-chooser");
    window.press(KeyEvent.VK_DOWN, KeyEvent.VK_ALT);
    window.until("the list is open", chooser::isPopupVisible);
    window.press(KeyEvent.VK_DOWN);
    assertThat(boat()).isEqualTo("knot");
    window.press(KeyEvent.VK_ENTER);
    window.until("the next one is chosen", () -> boat().equals("stint"));
  }

  @Test
  void theSmallFormAsksForModelYearAndChoices() {
    JComboBox<?> chooser = window.find("boat-chooser", JComboBox.class);
    window.act(
        () ->
            java.awt.EventQueue.invokeLater(
                () -> chooser.setSelectedIndex(chooser.getItemCount() - 1)));
    window.until("the form is there", () -> dialog().isPresent());
    JComboBox<?> model = window.find("unknown-model", JComboBox.class);
    window.act(() -> model.setSelectedIndex(1));
    JButton use = window.find("unknown-use", JButton.class);
    assertThat(window.ask(use::isEnabled)).isFalse();
    window.robot().focusAndWaitForFocusGain(window.find("unknown-year", JTextField.class));
    window.type("2015");
    window.until("the boat is complete", use::isEnabled);
    JComboBox<?> vent = window.find("unknown-vent", JComboBox.class);
    window.act(() -> vent.setSelectedIndex(1));
    window.click(use);
    window.until(
        "she is the working boat", () -> boat().equals("a dinghy of 2015 with vent-fitted"));
  }

  private Optional<JDialog> dialog() {
    for (java.awt.Window each : desk().window().frame().getOwnedWindows()) {
      if (each instanceof JDialog dialog && dialog.isShowing()) {
        return Optional.of(dialog);
      }
    }
    return Optional.empty();
  }
}
