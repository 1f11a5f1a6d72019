package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import limberboard.cli.CommandContext;
import limberboard.cli.Terminal;
import limberboard.cli.TerminalRun;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.support.RopedWorkspace;
import limberboard.desktop.support.SmallWorkspace;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Ropes ticked on Rigging and shopped for, through real mouse and keyboard events. */
class RopesWindowTest extends RealWindow {
  private static final LocalDate DAY = LocalDate.of(2028, 3, 20);

  @Override
  @BeforeEach
  void open() throws IOException {
    open(100);
  }

  private void open(int percent) throws IOException {
    Memory memory = new Memory(new Forgetful());
    memory.remember("text-percent", Integer.toString(percent));
    window = SmallWindow.open(RopedWorkspace.copyTo(folder), memory);
    window.act(
        () -> {
          desk().session().choose(Optional.of("knot"));
          desk().upkeep().day(Optional.of(DAY));
        });
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
    window.press(KeyEvent.VK_R, KeyEvent.VK_ALT);
  }

  private void untilPageSays(String what) {
    window.until(
        "the sheet says " + what,
        () ->
            window.showing().stream().anyMatch(one -> "page".equals(one.getName()))
                && window.words("page").contains(what));
  }

  private String says(String name) {
    return window.ask(() -> window.find(name, Wrapped.class).getText());
  }

  private boolean isOn(String box) {
    return window.ask(window.find(box, JCheckBox.class)::isSelected);
  }

  private Path saved(String name) {
    Path file = folder.resolve(name);
    window.until(
        name + " is written",
        () -> desk().notices().current().filter(n -> n.text().contains(name)).isPresent());
    return file;
  }

  private Path terminal(String option, String file) {
    Path to = folder.resolve(file);
    StringWriter err = new StringWriter();
    CommandContext session =
        new CommandContext(
            new BufferedReader(new StringReader("")),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            folder,
            Optional.empty(),
            SmallWorkspace.TODAY);
    int code =
        new Terminal(session, new TerminalRun.NoWindow())
            .run(
                "shopping",
                "--boat",
                "knot",
                "--on",
                DAY.toString(),
                "--season",
                Integer.toString(DAY.getYear()),
                "--ropes",
                "main-halyard,jib-sheets",
                option,
                to.toString());
    assertThat(code).as(err.toString()).isZero();
    return to;
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  /** Ticks the main halyard and the jib sheets and goes to the shop, from wherever the focus is. */
  private void shopForTwoByKeyboard() {
    untilPageSays("Main halyard");
    window.press(KeyEvent.VK_F6);
    assertThat(window.ask(() -> window.find("rigging-ropes", CardList.class).isFocusOwner()))
        .isTrue();
    window.press(KeyEvent.VK_SPACE);
    window.press(KeyEvent.VK_END);
    window.press(KeyEvent.VK_SPACE);
    assertThat(says("rigging-ticked")).isEqualTo("2 ropes ticked, 23 m in all.");
    window.press(KeyEvent.VK_F, KeyEvent.VK_ALT);
    untilPageSays("2 ropes");
  }

  @Test
  void byKeyboardAloneFromTheTicksToTheSavedList() throws IOException {
    shopForTwoByKeyboard();
    untilPageSays("Cut from one length of 23 m: 11 m, 2 × 6 m");
    untilPageSays("1 × reel of 5 m");
    window.focus("shopping-csv");
    window.press(KeyEvent.VK_ENTER);
    assertThat(Files.readString(saved("shopping-knot-2028.csv")))
        .contains("jib-sheets")
        .isEqualTo(Files.readString(terminal("--csv", "terminal.csv")));
    window.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL);
    window.until("it is printed", () -> !window.printer().jobs().isEmpty());
    assertThat(text(window.printer().jobs().get(0).pdf()))
        .contains("Jib sheets")
        .isEqualTo(text(Files.readAllBytes(terminal("--pdf", "terminal.pdf"))));
  }

  @Test
  void ropesAreTakenOutOfTheListOneByOneAndAllAtOnce() {
    shopForTwoByKeyboard();
    window.focus("shop-rope-jib-sheets");
    window.press(KeyEvent.VK_SPACE);
    untilPageSays("11 m by the metre");
    assertThat(isOn("shop-rope-jib-sheets")).isFalse();
    assertThat(window.ask(window.find("shop-rope-jib-sheets", JCheckBox.class)::isFocusOwner))
        .isTrue();
    window.press(KeyEvent.VK_UP);
    window.until(
        "the focus is on the rope above",
        () -> window.find("shop-rope-main-halyard", JCheckBox.class).isFocusOwner());
    window.click("shop-rope-jib-sheets");
    untilPageSays("23 m by the metre");
    window.focus("shopping-no-ropes");
    window.press(KeyEvent.VK_ENTER);
    window.until("the ropes are gone", () -> !window.shows("shop-rope-jib-sheets"));
    assertThat(window.words("page")).doesNotContain("Jib sheets");
    assertThat(window.shows("shopping-no-ropes")).isFalse();
    assertThat(isOn("shop-replace-gasket")).isTrue();
  }

  @Test
  void allAreTickedAndClearedWithTheMouseToo() {
    untilPageSays("Main halyard");
    assertThat(window.ask(window.find("rigging-shop", AbstractButton.class)::isEnabled)).isFalse();
    window.click("rigging-tick-all");
    assertThat(says("rigging-ticked")).startsWith("3 ropes ticked, 23 m in all");
    assertThat(
            window.ask(
                () ->
                    window
                        .find("rigging-shop", AbstractButton.class)
                        .getAccessibleContext()
                        .getAccessibleDescription()))
        .startsWith("3 ropes ticked");
    window.click("rigging-clear");
    assertThat(says("rigging-ticked")).isEqualTo("No rope is ticked.");
    window.click("rigging-tick-all");
    window.click("rigging-shop");
    untilPageSays("Jib halyard");
    assertThat(window.words("page")).contains("gives no I");
  }

  @Test
  void theRopesOfWorkThatIsChosenTooAreBoughtOnce() {
    shopForTwoByKeyboard();
    untilPageSays("counted once with");
    assertThat(isOn("shop-renew-main-halyard")).isTrue();
    assertThat(window.words("page")).contains("23 m by the metre");
    window.click("shop-renew-main-halyard");
    window.until(
        "nothing is shared any more", () -> !window.words("page").contains("counted once with"));
    assertThat(window.words("page")).contains("23 m by the metre").contains("Main halyard");
    window.click("shop-renew-main-halyard");
    window.click("shop-rope-main-halyard");
    window.until(
        "the work alone is shopped for",
        () ->
            window.words("page").contains("Renew the main halyard")
                && !window.words("page").contains("counted once with"));
    assertThat(window.words("page")).contains("23 m by the metre");
  }

  @Test
  void aRopeThatIsTakenOffTheModelsPageIsNamedAndLeftOut() {
    shopForTwoByKeyboard();
    RopedWorkspace.dropJibSheets(window.folders());
    window.act(() -> desk().loader().load());
    window.until("it is said", () -> window.shows("shopping-gone"));
    assertThat(says("shopping-gone")).contains("Not on her list").contains("Jib sheets");
    untilPageSays("11 m by the metre");
    window.press(KeyEvent.VK_R, KeyEvent.VK_ALT);
    window.until("it is said there too", () -> window.shows("rigging-gone"));
    assertThat(says("rigging-gone")).contains("Jib sheets");
    assertThat(says("rigging-ticked")).isEqualTo("1 rope ticked, 11 m in all.");
  }

  @Test
  void eachBoatKeepsItsRopes() {
    shopForTwoByKeyboard();
    window.act(() -> desk().session().choose(Optional.of("stint")));
    window.until("the barge has none", () -> !window.shows("shop-rope-jib-sheets"));
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.until("they are there again", () -> window.shows("shop-rope-jib-sheets"));
    assertThat(isOn("shop-rope-jib-sheets")).isTrue();
  }

  @Test
  void withLargeTextInASmallWindowItIsDoneByKeyboardToo() throws IOException {
    window.close();
    clear();
    open(200);
    window.act(() -> window.frame().target().setSize(1024, 700));
    window.until("the ropes are there", () -> window.shows("page"));
    shopForTwoByKeyboard();
    untilPageSays("Cut from one length of 23 m");
  }

  private void clear() throws IOException {
    try (java.util.stream.Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        if (!file.equals(folder)) {
          Files.delete(file);
        }
      }
    }
  }
}
