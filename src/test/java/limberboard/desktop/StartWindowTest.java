package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.text.JTextComponent;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.Due;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The start of a bought boat's log through real mouse and keyboard events. */
class StartWindowTest extends RealWindow {
  private static final String LOG = "date,work,engine-hours,note\n2026-05-01,launched,,\n";

  @Override
  @BeforeEach
  void open() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Path knot = folder.resolve("boats/knot");
    Files.writeString(knot.resolve("log.csv"), LOG);
    Path file = knot.resolve("boat.yaml");
    Files.writeString(file, Files.readString(file) + "bought: 2026-03-01\n");
    page("look-at-hoses", "inspect", "plumbing", "surveyed: true, left-undone: sinks");
    page("clean-strainer", "service", "plumbing", "left-undone: stops");
    page("look-at-deck", "inspect", "deck", "surveyed: true, left-undone: hurts");
    window = SmallWindow.open(folders, new Memory(new Forgetful()));
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.press(KeyEvent.VK_U, KeyEvent.VK_ALT);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
  }

  private void page(String id, String work, String system, String left) throws IOException {
    Files.writeString(
        folder.resolve("articles/procedures/" + id + ".md"),
        "---\ntitle: "
            + id.replace('-', ' ')
            + "\nsystem: "
            + system
            + "\nwork: "
            + work
            + "\nskill: owner\nminutes: 10\nlook-for: {good: Firm., bad: Loose.}\n"
            + "interval: {every: P1Y, need: must, "
            + left
            + "}\n---\n1. Do it.\n");
  }

  private String log() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  private void toStart() {
    window.press(KeyEvent.VK_K, KeyEvent.VK_ALT);
    window.until("the form is there", () -> window.shows("start-survey"));
  }

  private void untilWords(String what) {
    window.until(
        "it says " + what,
        () ->
            window.showing().stream()
                .anyMatch(one -> one instanceof Wrapped text && text.getText().contains(what)));
  }

  private void untilFocusOn(String name) {
    window.until(name + " has the focus", () -> window.find(name, JComponent.class).hasFocus());
  }

  private void untilLogHas(String what) {
    window.until(
        "the log has " + what,
        () -> {
          try {
            return log().contains(what);
          } catch (IOException e) {
            return false;
          }
        });
  }

  @Test
  void byKeyboardAloneIntoTheLogAndBackInOneStep() throws IOException {
    untilWords("Nobody has said yet what is known of her");
    toStart();
    untilFocusOn("start-survey");
    window.focus("start-told-plumbing-care");
    window.press(KeyEvent.VK_P);
    window.press(KeyEvent.VK_ENTER);
    untilFocusOn("start-when-plumbing-care");
    window.type("2025");
    window.press(KeyEvent.VK_ENTER);
    untilFocusOn("start-told-deck-care");
    window.press(KeyEvent.VK_ENTER);
    untilFocusOn("start-told-deck-renewals");
    window.press(KeyEvent.VK_B);
    window.press(KeyEvent.VK_ENTER);
    window.type("5/2024");
    window.press(KeyEvent.VK_ENTER);
    untilFocusOn("start-write");
    untilWords("3 lines for the log");
    window.press(KeyEvent.VK_ENTER);
    untilLogHas("2025-01-01,look-at-hoses,,,said year");
    assertThat(log())
        .contains("2025-01-01,clean-strainer,,,said year")
        .contains("2024-05-01,replace-gasket,,,bill month")
        .doesNotContain("look-at-deck");
    window.until("the list is there", () -> window.shows("due"));
    untilFocusOn("due");
    assertThat(window.ask(() -> window.find("written", Wrapped.class).getText()))
        .isEqualTo("Written into Knot’s log: 3 lines.");
    assertThat(window.shows("written-all")).isFalse();
    window.click("written-lines");
    window.until("the lines are there", () -> window.shows("written-all"));
    untilWords("about 2025, look at hoses");
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    window.until("who goes on has seen it", () -> !window.shows("written"));
    window.press(KeyEvent.VK_D, KeyEvent.VK_ALT);
    window.until(
        "what is left comes first",
        () ->
            desk().upkeep().lines().stream().anyMatch(line -> line.group() == Due.Group.NOT_KNOWN));
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until(
        "all of it is taken back",
        () -> {
          try {
            return log().equals(LOG);
          } catch (IOException e) {
            return false;
          }
        });
    assertThat(window.slowOnEventThread()).isEmpty();
  }

  @Test
  void aSurveyTicksWhatItCanHaveLookedAtAndNothingElse() throws IOException {
    toStart();
    window.type("12 Sep 2025");
    window.press(KeyEvent.VK_ENTER);
    untilWords("2 lines for the log");
    window.focus("start-told-deck-care");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    untilLogHas("2025-09-12,look-at-hoses,,,survey");
    window.until("the log is read", () -> desk().session().boat().orElseThrow().log().size() == 3);
    untilFocusOn("due");
    assertThat(log())
        .contains("2025-09-12,look-at-deck,,,survey")
        .doesNotContain("clean-strainer", "replace-gasket");
  }

  @Test
  void oneByOneAndWhatCannotBeReadIsSaidAndNotWritten() throws IOException {
    toStart();
    window.click("start-each-plumbing-care");
    window.until("each is there", () -> window.shows("start-told-clean-strainer"));
    window.focus("start-told-clean-strainer");
    window.press(KeyEvent.VK_D);
    window.press(KeyEvent.VK_ENTER);
    window.type("2027");
    untilWords("lies in the future");
    assertThat(window.ask(() -> window.find("start-write", JComponent.class).isEnabled()))
        .isFalse();
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.type("3.4.2026");
    untilWords("1 line for the log");
    window.click("start-write");
    untilLogHas("2026-04-03,clean-strainer,,,seen");
    assertThat(log()).doesNotContain("look-at-hoses");
  }

  @Test
  void whatIsAnsweredIsKeptWhileSomethingElseIsLookedAt() {
    toStart();
    window.focus("start-told-deck-care");
    window.press(KeyEvent.VK_S);
    window.press(KeyEvent.VK_ENTER);
    window.type("May 2025");
    window.press(KeyEvent.VK_D, KeyEvent.VK_ALT);
    window.until("the list is there", () -> window.shows("due"));
    window.act(() -> desk().session().choose(Optional.of("stint")));
    untilWords("Did you buy her from another owner?");
    window.act(() -> desk().session().choose(Optional.of("knot")));
    untilWords("Nobody has said yet what is known of her");
    toStart();
    assertThat(
            window.ask(() -> window.find("start-when-deck-care", JTextComponent.class).getText()))
        .isEqualTo("May 2025");
    assertThat(
            window.ask(
                () -> window.find("start-told-deck-care", JComboBox.class).getSelectedItem()))
        .hasToString("SURVEY");
  }

  @Test
  void whoCameBeforeTheQuestionsWereThereGoesOnToThem() throws IOException {
    window.act(() -> desk().session().choose(Optional.of("stint")));
    untilWords("Did you buy her from another owner?");
    window.press(KeyEvent.VK_K, KeyEvent.VK_ALT);
    untilFocusOn("start-particulars");
    Path file = folder.resolve("boats/stint/boat.yaml");
    Files.writeString(file, Files.readString(file) + "bought: 2026-03-01\n");
    window.act(() -> desk().loader().load());
    untilFocusOn("start-survey");
  }

  @Test
  void fromTheBoatsFormAndBackToWhatIsFitted() {
    window.press(KeyEvent.VK_B, KeyEvent.VK_ALT);
    window.until("the form of the boat is there", () -> window.shows("begin-log"));
    window.click("begin-log");
    window.until("the form is there", () -> window.shows("start-survey"));
    window.focus("start-told-deck-renewals");
    window.press(KeyEvent.VK_N);
    untilWords("leave it as not known where she really has none");
    window.click("start-particulars");
    window.until("the form of the boat is there", () -> window.shows("boat-BOUGHT"));
  }

  @Test
  void aNewBoatThatWasBoughtLeadsOnByKeyboardAloneInASmallWindow() throws IOException {
    window.act(() -> desk().window().frame().setBounds(0, 0, 1024, 700));
    window.press(KeyEvent.VK_N, KeyEvent.VK_CONTROL);
    window.until("the form is there", () -> window.shows("boat-NAME"));
    untilFocusOn("boat-NAME");
    window.type("Godwit");
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_D);
    window.press(KeyEvent.VK_TAB);
    window.type("21");
    window.press(KeyEvent.VK_TAB);
    window.type("2014");
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_TAB);
    window.type("3.10.2025");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    window.until("it can be begun", () -> window.shows("begin-log"));
    untilFocusOn("begin-log");
    window.press(KeyEvent.VK_SPACE);
    window.until("the form is there", () -> window.shows("start-survey"));
    untilFocusOn("start-survey");
    assertThat(Files.readString(folder.resolve("boats/godwit/boat.yaml")))
        .contains("bought: 2025-10-03")
        .doesNotContain("equipment");
    window.type("12 Sep 2025");
    window.press(KeyEvent.VK_ENTER);
    untilFocusOn("start-told-plumbing-care");
    untilWords("2 lines for the log");
    window.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
    Path log = folder.resolve("boats/godwit/log.csv");
    window.until("the log is written", () -> Files.isRegularFile(log));
    window.until("the log is read", () -> desk().session().boat().orElseThrow().log().size() == 2);
    untilFocusOn("due");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until("all of it is taken back", () -> !Files.isRegularFile(log));
  }
}
