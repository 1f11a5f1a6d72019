package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.accessibility.AccessibleExtendedText;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.MouseClickInfo;
import org.junit.jupiter.api.Test;

/** Reading, as somebody does it who has mouse and keyboard, on the real threads. */
class ReadingWindowTest extends RealWindow {
  private static final String BEGINNING = "---\ntitle: A long page\n---\n";

  private static String lines(int count) {
    StringBuilder text =
        new StringBuilder("Read [about the hose](../procedures/tighten-hose.md).\n\n");
    for (int i = 1; i <= count; i++) {
      text.append("Line number ").append(i).append(" of the long page.\n\n");
    }
    return text.toString();
  }

  private Path write(int lines) {
    try {
      Path file = window.folders().articles().resolve("topics/long.md");
      Files.createDirectories(file.getParent());
      Files.writeString(file, BEGINNING + lines(lines));
      return file;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private void load() {
    window.act(() -> desk().loader().load());
  }

  private void openLong() {
    write(80);
    load();
    window.until("the page is known", () -> desk().session().library().page("long").isPresent());
    openPage("long", "Line number 80");
  }

  private void openPage(String id, String words) {
    window.act(() -> desk().navigator().openPage(id));
    untilPageSays(words);
  }

  private void untilPageSays(String words) {
    window.until(
        "the page says " + words,
        () ->
            window.showing().stream().anyMatch(one -> "page".equals(one.getName()))
                && window.words("page").contains(words));
  }

  private JComponent page() {
    return window.find("page", JComponent.class);
  }

  private int scrolled() {
    return window.ask(
        () ->
            ((JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, page()))
                .getVerticalScrollBar()
                .getValue());
  }

  private Rectangle where(String words) {
    return window.ask(
        () -> {
          int at = window.words("page").indexOf(words);
          AccessibleExtendedText text =
              (AccessibleExtendedText) page().getAccessibleContext().getAccessibleText();
          return text.getTextBounds(at, at + words.length());
        });
  }

  private Optional<String> focused() {
    return window.ask(
        () ->
            Optional.ofNullable(
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Component::getName));
  }

  private String clipboard(DataFlavor flavour) {
    try {
      return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(flavour);
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private void copy() {
    window.press(KeyEvent.VK_C, KeyEvent.VK_CONTROL);
  }

  private String told() {
    return window.ask(() -> desk().notices().current().map(notice -> notice.text()).orElse(""));
  }

  @Test
  void theMouseSelectsLettersWordsAndPassages() {
    openLong();
    Rectangle box = where("number 3 of");
    window.robot().pressMouse(page(), new Point(box.x + 1, box.y + box.height / 2));
    window.robot().moveMouse(page(), new Point(box.x + 40, box.y + box.height / 2));
    window.robot().moveMouse(page(), new Point(box.x + box.width, box.y + box.height / 2));
    window.robot().releaseMouse(MouseButton.LEFT_BUTTON);
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("number 3 of");
    assertThat(clipboard(DataFlavor.allHtmlFlavor)).contains("<p>number 3 of</p>");
    Point middle = new Point(box.x + 10, box.y + box.height / 2);
    window.click(page(), middle, 2);
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("number");
    window.click(page(), middle, 3);
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("Line number 3 of the long page.");
  }

  @Test
  void theKeyboardSelectsAndCopies() {
    openLong();
    assertThat(focused()).as("a page that is opened has the focus").contains("page");
    window.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor))
        .contains("A long page", "Line number 1 of the long page.\n\nLine number 2")
        .endsWith("Tighten the drain hose");
    assertThat(clipboard(DataFlavor.allHtmlFlavor)).contains("<h1>A long page</h1>");
    Rectangle box = where("number 5 of");
    window.click(page(), new Point(box.x + 1, box.y + box.height / 2));
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT);
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_SHIFT);
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("number 5");
  }

  @Test
  void wordsAreFoundCountedAndThePageGetsTheFocusBack() {
    openLong();
    window.focus("contents");
    window.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL);
    assertThat(focused()).contains("find-words");
    window.type("number 7");
    JLabel count = window.find("find-count", JLabel.class);
    window.until("the first of them", () -> count.getText().equals("1 of 11"));
    window.press(KeyEvent.VK_ENTER);
    window.press(KeyEvent.VK_F3);
    window.until("the third of them", () -> count.getText().equals("3 of 11"));
    assertThat(scrolled()).as("it is in sight").isPositive();
    window.press(KeyEvent.VK_F3, KeyEvent.VK_SHIFT);
    window.until("the second of them", () -> count.getText().equals("2 of 11"));
    window.press(KeyEvent.VK_ESCAPE);
    assertThat(focused()).contains("page");
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor))
        .as("what was found is selected")
        .isEqualTo("number 7");
  }

  @Test
  void backGoesToThePlaceOnThePage() {
    openLong();
    window.press(KeyEvent.VK_PAGE_DOWN);
    window.press(KeyEvent.VK_PAGE_DOWN);
    int place = scrolled();
    assertThat(place).isPositive();
    openPage("replace-gasket", "Replace the locker gasket");
    assertThat(scrolled()).isZero();
    window.press(KeyEvent.VK_LEFT, KeyEvent.VK_ALT);
    untilPageSays("Line number 80");
    window.until("it stands where it stood", () -> scrolled() == place);
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_ALT);
    untilPageSays("Replace the locker gasket");
    window.until("it stands at its beginning", () -> scrolled() == 0);
  }

  @Test
  void aReloadLeavesPlaceSelectionAndSearchAsTheyAre() {
    openLong();
    window.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL);
    window.type("number 40");
    window.press(KeyEvent.VK_ENTER);
    int place = scrolled();
    write(90);
    load();
    untilPageSays("Line number 90");
    assertThat(scrolled()).isEqualTo(place);
    assertThat(focused()).contains("find-words");
    assertThat(window.find("find-count", JLabel.class).getText()).isEqualTo("1 of 1");
    window.press(KeyEvent.VK_ESCAPE);
    write(95);
    load();
    untilPageSays("Line number 95");
    copy();
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("number 40");
    assertThat(scrolled()).isEqualTo(place);
  }

  @Test
  void aBrokenPageSaysWhyAndComesBackWhenItIsMended() throws IOException {
    openLong();
    Path file = window.folders().articles().resolve("topics/long.md");
    Files.writeString(file, "---\ntitle: [\n---\nBroken.\n");
    load();
    window.until("the page is gone", () -> desk().reading().page().isEmpty());
    assertThat(window.showing())
        .noneMatch(one -> "page".equals(one.getName()))
        .anyMatch(
            one ->
                one instanceof javax.swing.text.JTextComponent text
                    && text.getText().contains("This page cannot be read just now")
                    && text.getText().contains("topics/long.md"));
    Files.writeString(file, BEGINNING + "Mended again.\n");
    load();
    untilPageSays("Mended again.");
    assertThat(window.words("page")).doesNotContain("Line number");
  }

  @Test
  void tabGoesToTheLinksAndEnterFollowsThem() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    openLong();
    window.press(KeyEvent.VK_TAB);
    window.press(KeyEvent.VK_ENTER);
    untilPageSays("Tighten the drain hose");
    assertThat(window.ask(() -> desk().reading().page().orElseThrow().id()))
        .isEqualTo("tighten-hose");
    window.press(KeyEvent.VK_F6);
    assertThat(focused()).as("beside the page").contains("page-upkeep");
    window.press(KeyEvent.VK_F6, KeyEvent.VK_SHIFT);
    assertThat(focused()).contains("page");
  }

  @Test
  void aPageOpenedFromUpkeepGoesBackToUpkeep() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.press(KeyEvent.VK_3, KeyEvent.VK_CONTROL);
    window.until("upkeep is shown", () -> desk().window().current().id().equals("upkeep"));
    openPage("replace-gasket", "Replace the locker gasket");
    window.press(KeyEvent.VK_LEFT, KeyEvent.VK_ALT);
    window.until("upkeep is shown again", () -> desk().window().current().id().equals("upkeep"));
    window.press(KeyEvent.VK_RIGHT, KeyEvent.VK_ALT);
    window.until("the page is shown again", () -> desk().window().current().id().equals("pages"));
  }

  @Test
  void aPageIsPrintedByKeyAndSavedAndOpened() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    openPage("replace-gasket", "Replace the locker gasket");
    window.press(KeyEvent.VK_P, KeyEvent.VK_CONTROL);
    window.until("it is printed", () -> !window.printer().jobs().isEmpty());
    assertThat(window.printer().jobs().get(0).name()).isEqualTo("replace-gasket-knot");
    assertThat(window.printer().jobs().get(0).pdf())
        .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    window.click("save-page");
    window.until("it is saved", () -> told().contains("replace-gasket-knot.pdf"));
    window.click("notice-Open");
    window.until("it is opened", () -> !window.opened().isEmpty());
    assertThat(window.opened().get(0)).hasFileName("replace-gasket-knot.pdf");
  }

  @Test
  void theBoatStandsBesideThePageAndLeadsToUpkeep() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    openPage("replace-gasket", "Which pages point here");
    window.until(
        "when it was last done",
        () ->
            window.showing().stream()
                .anyMatch(
                    one ->
                        one instanceof javax.swing.text.JTextComponent text
                            && text.getText().equals("Last done")));
    window.click("page-upkeep");
    window.until("upkeep is shown", () -> desk().window().current().id().equals("upkeep"));
  }

  @Test
  void largeTextFoldsTheRegionsAndLeavesTheFocusInThePage() {
    openLong();
    window.act(() -> desk().settings().textPercent(200));
    window.until(
        "the regions are tabs",
        () -> window.showing().stream().anyMatch(javax.swing.JTabbedPane.class::isInstance));
    window.until("the page has the focus", () -> focused().equals(Optional.of("page")));
    window.act(() -> desk().settings().textPercent(100));
    window.until(
        "the regions are side by side",
        () -> window.showing().stream().noneMatch(javax.swing.JTabbedPane.class::isInstance));
    window.until("the page has the focus", () -> focused().equals(Optional.of("page")));
  }

  @Test
  void theContextMenuCopies() {
    openLong();
    Rectangle box = where("number 4 of");
    Point middle = new Point(box.x + 10, box.y + box.height / 2);
    window.click(page(), middle, 3);
    window.robot().click(page(), middle, MouseClickInfo.rightButton().button(), 1);
    window.robot().waitForIdle();
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    assertThat(clipboard(DataFlavor.stringFlavor)).isEqualTo("Line number 4 of the long page.");
  }

  @Test
  void mistakesInTheWordsForSearchAreInTheListOfProblems() throws IOException {
    Path words = Files.createDirectories(window.folders().words());
    Files.writeString(words.resolve("synonyms.txt"), "hatch, hatch lid\nalone\n");
    Files.writeString(words.resolve("spellings.txt"), "halyard halliard\n");
    load();
    openPage("tighten-hose", "Turn the clip");
    window.until("the problems are counted", () -> window.shows("problems"));
    window.click("problems");
    window.focus("problem-list");
    assertThat(window.ask(() -> window.find("problem-list", JList.class).getModel().toString()))
        .contains("index/words/synonyms.txt:2: \"alone\" stands alone; two or more words")
        .contains("index/words/spellings.txt:1: there is no colon; the right word, a colon");
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    assertThat(window.find("problem-source", JTextArea.class).getText())
        .isEqualTo("hatch, hatch lid\nalone\n");
  }
}
