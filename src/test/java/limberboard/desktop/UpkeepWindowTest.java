package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import limberboard.upkeep.Due.Group;
import org.junit.jupiter.api.Test;

/** The Upkeep place through real mouse and keyboard events. */
class UpkeepWindowTest extends RealWindow {
  private void goThere() {
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(LocalDate.of(2029, 6, 1)));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("one piece of work is overdue", () -> overdue() == 1);
  }

  private long overdue() {
    return desk().upkeep().upkeep().map(known -> known.of(Group.OVERDUE).size()).orElse(-1);
  }

  private String log() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  private int listed() {
    return window.ask(() -> window.find("due", CardList.class).getModel().getSize());
  }

  @Test
  void workIsMarkedDoneWithTheKeyboardAndUndoneToTheLetter() throws IOException {
    String before = log();
    goThere();
    assertThat(listed()).isEqualTo(1);
    window.press(KeyEvent.VK_M, KeyEvent.VK_ALT);
    window.focus("done-note");
    window.type("new strip");
    window.press(KeyEvent.VK_ENTER);
    window.until("nothing is overdue any more", () -> overdue() == 0);
    assertThat(log()).isEqualTo(before + "2026-05-20,replace-gasket,,new strip\n");
    assertThat(listed()).isZero();
    assertThat(window.ask(() -> window.find("written", Wrapped.class).getText()))
        .contains("Written into Knot’s log: 20 May 2026, Replace the locker gasket.")
        .contains("It comes next by");
    window.focus("due-coming");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until("it is overdue again", () -> overdue() == 1);
    assertThat(log()).isEqualTo(before);
    assertThat(listed()).isEqualTo(1);
  }

  @Test
  void theButtonTakesExactlyThisLineOutAgain() throws IOException {
    String before = log();
    goThere();
    window.click("mark-done");
    window.click("write-done");
    window.until("nothing is overdue any more", () -> overdue() == 0);
    window.click("undo-log");
    window.until("it is overdue again", () -> overdue() == 1);
    assertThat(log()).isEqualTo(before);
  }

  @Test
  void aBrokenLogShowsTheReasonAndLosesNothing() throws IOException {
    goThere();
    String broken = log() + "2025-05-01,launched,,\"never closed\n";
    window.click("mark-done");
    window.focus("done-note");
    window.type("typed");
    Files.writeString(folder.resolve("boats/knot/log.csv"), broken);
    window.press(KeyEvent.VK_ENTER);
    window.until("the reason is there", () -> desk().log().remark().isPresent());
    assertThat(window.ask(() -> window.find("written", Wrapped.class).getText()))
        .contains("Nothing was written")
        .contains("boats/knot/log.csv");
    assertThat(window.ask(() -> window.find("done-note", JTextField.class).getText()))
        .isEqualTo("typed");
    assertThat(log()).isEqualTo(broken);
  }

  @Test
  void doubtfulLinesAreAskedAboutWithFileAndLine() throws IOException {
    Files.writeString(
        folder.resolve("boats/knot/log.csv"), log() + "2027-01-01,launched,,too early\n");
    window.act(() -> desk().loader().load());
    goThere();
    window.until("there is a question", () -> !desk().upkeep().questions().isEmpty());
    assertThat(
            window.showing().stream()
                .filter(Wrapped.class::isInstance)
                .map(shown -> window.ask(() -> ((Wrapped) shown).getText())))
        .anyMatch(text -> text.startsWith("boats/knot/log.csv, line 4: 2027-01-01 lies in"));
  }

  @Test
  void aDayThatIsTypedIsAskedAbout() {
    goThere();
    window.focus("upkeep-day");
    window.act(() -> window.find("upkeep-day", JTextField.class).setText("20 May 2026"));
    window.press(KeyEvent.VK_ENTER);
    window.until("nothing is due today", () -> overdue() == 0);
    assertThat(window.ask(() -> desk().upkeep().day())).isEqualTo(LocalDate.of(2026, 5, 20));
  }

  @Test
  void aDayThatCannotBeReadIsSaidInWordsAndShowsNoOldList() {
    goThere();
    window.focus("upkeep-day");
    window.act(() -> window.find("upkeep-day", JTextField.class).setText("11 Marhc 2027"));
    assertThat(window.ask(() -> window.find("upkeep-day-words", Wrapped.class).getText()))
        .isEqualTo("“marhc” is no month. Write it as 20 May 2026.");
    window.press(KeyEvent.VK_ENTER);
    assertThat(window.shows("due")).isFalse();
    window.act(() -> window.find("upkeep-day", JTextField.class).setText("3/11/2027"));
    assertThat(window.ask(() -> window.find("upkeep-day-words", Wrapped.class).getText()))
        .isEqualTo("Read as 3 November 2027. Enter shows it.");
    window.press(KeyEvent.VK_ENTER);
    window.until("the list is back", () -> window.shows("due"));
    assertThat(window.ask(() -> desk().upkeep().day())).isEqualTo(LocalDate.of(2027, 11, 3));
    assertThat(window.ask(() -> window.find("upkeep-day", JTextField.class).getText()))
        .isEqualTo("3 November 2027");
  }

  @Test
  void withoutABoatThePlaceAsksForOne() {
    window.act(() -> desk().session().choose(Optional.empty()));
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.focus("upkeep-boats");
    window.press(KeyEvent.VK_HOME);
    window.press(KeyEvent.VK_ENTER);
    window.until("a boat is chosen", () -> desk().session().boat().isPresent());
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    assertThat(window.ask(() -> window.find("upkeep-day", JTextField.class).isShowing())).isTrue();
  }

  @Test
  void anEventIsWrittenIntoTheLogAndUndone() throws IOException {
    String before = log();
    goThere();
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    window.focus("log-engine-hours");
    window.type("14.5");
    window.press(KeyEvent.VK_ENTER);
    window.until("the log has it", () -> desk().session().boat().orElseThrow().log().size() == 3);
    assertThat(log()).isEqualTo(before + "2026-05-20,reading,14.5,\n");
    JTable table = window.find("upkeep-log-table", JTable.class);
    assertThat(window.ask(() -> table.getValueAt(0, 1))).isEqualTo("Reading or remark");
    assertThat(window.ask(() -> table.getValueAt(0, 2))).isEqualTo("14.5");
    window.focus("upkeep-log-table");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until(
        "the log is as before", () -> desk().session().boat().orElseThrow().log().size() == 2);
    assertThat(log()).isEqualTo(before);
  }

  private void untilFocusIs(String name) {
    window.until(
        "the focus is in " + name,
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner != null && name.equals(owner.getName());
        });
  }

  private void untilLogIs(String text) {
    window.until(
        "the log is written",
        () -> {
          try {
            return log().equals(text) && !desk().log().isBusy();
          } catch (IOException e) {
            return false;
          }
        });
  }

  @Test
  void aLineIsMarkedDoneCorrectedUndoneAndRedoneWithTheKeyboardAlone() throws IOException {
    String before = log();
    goThere();
    untilFocusIs("due");
    window.press(KeyEvent.VK_M, KeyEvent.VK_ALT);
    untilFocusIs("done-day");
    window.type("19.5.2026");
    window.press(KeyEvent.VK_ENTER);
    untilLogIs(before + "2026-05-19,replace-gasket,,\n");
    untilFocusIs("due");
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    untilFocusIs("upkeep-log-table");
    window.press(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
    window.press(KeyEvent.VK_F2);
    untilFocusIs("log-day");
    assertThat(window.ask(() -> window.find("log-day", JTextField.class).getText()))
        .isEqualTo("19 May 2026");
    window.type("18 may 26");
    window.press(KeyEvent.VK_ENTER);
    untilLogIs(before + "2026-05-18,replace-gasket,,\n");
    untilFocusIs("upkeep-log-table");
    window.press(KeyEvent.VK_DELETE);
    untilLogIs(before);
    assertThat(window.ask(() -> window.find("undo-log-here", JButton.class).getToolTipText()))
        .startsWith("Undo deleting “Replace the locker gasket”, 18 May 2026");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    untilLogIs(before + "2026-05-18,replace-gasket,,\n");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    untilLogIs(before + "2026-05-19,replace-gasket,,\n");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    untilLogIs(before);
    window.press(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
    untilLogIs(before + "2026-05-19,replace-gasket,,\n");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    untilLogIs(before + "2026-05-18,replace-gasket,,\n");
  }

  @Test
  void undoInAFieldLeavesTheLogAlone() throws IOException {
    String before = log();
    goThere();
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    window.focus("log-engine-hours");
    window.type("14.5");
    window.press(KeyEvent.VK_ENTER);
    untilLogIs(before + "2026-05-20,reading,14.5,\n");
    window.focus("log-note");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.type("half");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    assertThat(window.ask(() -> desk().log().isBusy())).isFalse();
    assertThat(log()).isEqualTo(before + "2026-05-20,reading,14.5,\n");
    assertThat(window.ask(() -> desk().log().toUndo())).isPresent();
  }

  @Test
  void workWithoutAnIntervalIsFoundByItsWordsAndLogged() throws IOException {
    String before = log();
    goThere();
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    window.act(() -> window.find("log-event", JComboBox.class).setSelectedIndex(0));
    window.focus("log-work");
    window.type("hose");
    window.until("it is found", () -> window.shows("log-works"));
    window.press(KeyEvent.VK_ENTER);
    untilFocusIs("log-day");
    window.press(KeyEvent.VK_ENTER);
    untilLogIs(before + "2026-05-20,tighten-hose,,\n");
    untilFocusIs("log-day");
  }

  @Test
  void twoTickedLinesAreWrittenTogetherAndUndoneInOneStep() throws IOException {
    String before = log();
    goThere();
    window.act(() -> desk().upkeep().day(Optional.empty()));
    window.until("today", () -> overdue() == 0);
    window.click("due-coming");
    window.focus("due");
    window.press(KeyEvent.VK_HOME);
    window.press(KeyEvent.VK_SPACE);
    window.press(KeyEvent.VK_END);
    window.press(KeyEvent.VK_SPACE, KeyEvent.VK_SHIFT);
    int ticked = listed();
    assertThat(window.ask(() -> window.find("due-ticked", Wrapped.class).getText()))
        .startsWith(ticked + " ticked");
    window.click("due-mark-ticked");
    untilFocusIs("done-day");
    window.press(KeyEvent.VK_ENTER);
    window.until("written", () -> desk().log().toUndo().isPresent());
    assertThat(log().lines().count()).isEqualTo(before.lines().count() + ticked);
    untilFocusIs("due");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    untilLogIs(before);
  }

  @Test
  void theFormAndItsButtonAreInSight() {
    goThere();
    for (int percent : List.of(100, 200)) {
      window.act(
          () -> {
            desk().window().frame().setSize(1024, 700);
            desk().settings().textPercent(percent);
          });
      window.act(() -> desk().upkeepPlace().look("due"));
      window.until("the list is shown at " + percent, () -> window.shows("due"));
      window.focus("due");
      window.press(KeyEvent.VK_ENTER);
      window.press(KeyEvent.VK_M, KeyEvent.VK_ALT);
      untilFocusIs("done-day");
      for (String name : List.of("done-day", "write-done")) {
        window.until(
            name + " is in sight at " + percent,
            () -> {
              JComponent part = window.find(name, JComponent.class);
              return part.getVisibleRect().height == part.getHeight() && part.getHeight() > 0;
            });
      }
      window.press(KeyEvent.VK_ESCAPE);
    }
  }

  @Test
  void theTimeLineIsDrawnAndItsWordsOpenThePage() {
    goThere();
    window.press(KeyEvent.VK_L, KeyEvent.VK_ALT);
    JComponent drawn = window.find("time-line", JComponent.class);
    window.until(
        "it is drawn",
        () ->
            String.valueOf(drawn.getAccessibleContext().getAccessibleDescription())
                .contains("Season 2029"));
    window.click("time-line-turn");
    CardList<?> words = window.find("time-line-words", CardList.class);
    assertThat(window.ask(() -> words.getModel().getSize())).isEqualTo(1);
    window.focus("time-line-words");
    window.press(KeyEvent.VK_ENTER);
    window.until("its page is open", () -> desk().reading().page().isPresent());
    assertThat(window.ask(() -> desk().reading().page().orElseThrow().id()))
        .isEqualTo("replace-gasket");
  }

  @Test
  void everythingHoldsInTheSmallestWindowWithTheLargestText() {
    goThere();
    window.act(
        () -> {
          desk().window().frame().setSize(1000, 680);
          desk().settings().textPercent(200);
        });
    window.until("the regions are tabs", () -> !window.shows("mark-done"));
    assertThat(window.ask(() -> window.shows("due"))).isTrue();
    window.focus("due");
    window.press(KeyEvent.VK_ENTER);
    window.until("the work is at the front", () -> window.shows("mark-done"));
    assertThat(window.ask(() -> window.shows("due"))).isFalse();
    for (String aspect : List.of("due", "time-line", "log")) {
      window.act(() -> desk().upkeepPlace().look(aspect));
      for (Component shown : window.showing()) {
        if (shown instanceof JButton button && !button.getText().isEmpty()) {
          assertThat(window.ask(() -> button.getWidth()))
              .as(aspect + ": " + button.getText())
              .isGreaterThanOrEqualTo(window.ask(() -> button.getPreferredSize().width));
        }
      }
    }
  }
}
