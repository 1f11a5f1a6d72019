package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JList;
import limberboard.desktop.parts.Wrapped;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The choice of what is needed how much, above what is due, through real keyboard events. */
class NeededWindowTest extends RealWindow {
  @BeforeEach
  void goTo() {
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(LocalDate.of(2028, 3, 20)));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.until("the choice is there", () -> window.shows("due-need"));
  }

  private int listed() {
    return window.find("due", JList.class).getModel().getSize();
  }

  private void choose(int downs) {
    window.focus("due-need");
    for (int i = 0; i < downs; i++) {
      window.press(KeyEvent.VK_DOWN);
    }
  }

  @Test
  void onlyWhatIsNeededSoMuchIsListedAndTheRestIsCounted() {
    assertThat(listed()).isEqualTo(1);
    choose(1);
    window.until("no must is listed", () -> listed() == 0);
    window.until(
        "it says how many are kept back, and how to see them",
        () -> says("1 not shown by this choice") && says("However needed"));
    choose(1);
    window.until("what should be done is listed", () -> listed() == 1);
    assertThat(window.find("due-need", JComboBox.class).getSelectedIndex()).isEqualTo(2);
    assertThat(window.slowOnEventThread()).isEmpty();
  }

  private boolean says(String what) {
    return window.showing().stream()
        .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what));
  }
}
