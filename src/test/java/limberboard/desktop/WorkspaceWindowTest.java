package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import limberboard.desktop.workspace.WorkspacePlace;
import limberboard.desktop.workspace.findings.FindingKind;
import limberboard.notes.NoteFolder;
import limberboard.notes.QuickNote;
import org.junit.jupiter.api.Test;

/** Notes and findings by keyboard alone. */
class WorkspaceWindowTest extends RealWindow {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final String VENT = "procedures/seal-vent.md";

  private WorkspacePlace place() {
    return (WorkspacePlace) desk().place("workspace");
  }

  private static boolean hasFocus(String name) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && name.equals(owner.getName());
  }

  private void untilFocused(String name) {
    window.until("the focus is on " + name, () -> hasFocus(name));
  }

  @Test
  void aNoteIsCaughtFromThePageItIsAboutAndWorkedIn() throws IOException {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.act(() -> desk().navigator().openPage("seal-vent"));
    untilFocused("page");
    window.press(KeyEvent.VK_J, CTRL);
    untilFocused("note-text");
    window.type("Say which cord");
    window.press(KeyEvent.VK_ENTER, CTRL);
    window.until("it is kept", () -> place().notes().waiting() == 1);
    NoteFolder folder = new NoteFolder(window.folders());
    QuickNote kept = folder.waiting().get(0);
    assertThat(kept.text()).isEqualTo("Say which cord");
    assertThat(kept.page()).contains("seal-vent");
    assertThat(kept.boat()).contains("knot");

    window.act(() -> desk().navigator().workspace("notes"));
    untilFocused("notes");
    window.press(KeyEvent.VK_DOWN);
    window.focus("notes-worked-in");
    window.press(KeyEvent.VK_ENTER);
    window.until("none waits", () -> place().notes().waiting() == 0);
    assertThat(folder.ended()).hasSize(1);
  }

  @Test
  void whatWasTypedAndNotKeptStandsThereAgain() {
    window.press(KeyEvent.VK_J, CTRL);
    untilFocused("note-text");
    window.type("half a th");
    window.press(KeyEvent.VK_ESCAPE);
    window.until("the dialog is gone", () -> !window.shows("note-text"));
    assertThat(window.ask(() -> place().notes().draft())).isEqualTo("half a th");
    window.act(() -> desk().window().frame().toFront());
    window.until("the window has the focus", () -> desk().window().frame().isFocused());
    window.press(KeyEvent.VK_J, CTRL);
    untilFocused("note-text");
    assertThat(window.find("note-text", JTextArea.class).getText()).isEqualTo("half a th");
    window.press(KeyEvent.VK_ESCAPE);
  }

  /** Puts a link that leads nowhere at the end of a page, and waits until it is found. */
  private String misspelt(Path page) throws IOException {
    String text = Files.readString(page) + "\nSee [it](tighten-hoze.md).\n";
    Files.writeString(page, text);
    window.press(KeyEvent.VK_F5);
    window.until("it is read", () -> !desk().session().workspace().problems().isEmpty());
    window.act(() -> desk().navigator().workspace("findings"));
    untilFocused("findings");
    window.until("they are found", () -> !place().findings().all().isEmpty());
    return text;
  }

  @Test
  void aLinkIsRepairedFromTheListAfterAsking() throws IOException {
    Path page = window.folders().articles().resolve(VENT);
    String text = misspelt(page);
    JList<?> list = window.find("findings", JList.class);
    int last = (int) text.lines().count();
    window.press(KeyEvent.VK_HOME);
    JTextArea source = window.find("finding-source", JTextArea.class);
    window.until("it stands at the line", () -> lineOf(source) == last);
    assertThat(window.ask(() -> list.getModel().getSize())).isGreaterThan(0);
    window.focus("finding-repair");
    window.press(KeyEvent.VK_ENTER);
    window.until("it asks first", () -> asks());
    assertThat(Files.readString(page)).isEqualTo(text);
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "the finding is gone",
        () ->
            place().findings().all().stream()
                .noneMatch(each -> each.toString().contains("tighten-hoze")));
    assertThat(Files.readString(page)).isEqualTo(text.replace("hoze", "hose"));
  }

  @Test
  void enterOnAFindingOpensItsPageForWritingAtItsLine() throws IOException {
    Path page = window.folders().articles().resolve(VENT);
    String text = misspelt(page);
    window.press(KeyEvent.VK_HOME);
    window.press(KeyEvent.VK_ENTER);
    untilFocused("write-text");
    JTextComponent written = window.find("write-text", JTextComponent.class);
    assertThat(window.ask(() -> text.substring(written.getCaretPosition())))
        .isEqualTo("See [it](tighten-hoze.md).\n");
  }

  @Test
  void aPageIsNotedAsReadByAKindOfReaderAndThatIsTakenBack() throws IOException {
    Path page = window.folders().articles().resolve(VENT);
    String text = Files.readString(page);
    window.act(() -> desk().navigator().workspace("findings"));
    untilFocused("findings");
    window.until("pages are to be read", () -> place().findings().count(FindingKind.UNREAD) > 0);
    window.act(() -> place().findings().kind(Optional.of(FindingKind.UNREAD)));
    window.focus("findings-filter");
    window.type("seal-vent");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("findings");
    window.press(KeyEvent.VK_HOME);
    window.focus("finding-read");
    window.press(KeyEvent.VK_ENTER);
    untilFocused("finding-reader");
    window.type("a rigger");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is noted", () -> holds(page, "read: {on: 2026-05-20, by: \"a rigger\""));
    window.until("it is off the list", () -> place().findings().shown().isEmpty());
    window.act(() -> desk().notices().current().orElseThrow().offers().get(0).action().run());
    window.until("it is taken back", () -> holds(page, text) && !holds(page, "read:"));
  }

  private static boolean holds(Path file, String words) {
    try {
      return Files.readString(file).contains(words);
    } catch (IOException e) {
      return false;
    }
  }

  private boolean asks() {
    return List.of(java.awt.Window.getWindows()).stream()
        .anyMatch(each -> each instanceof javax.swing.JDialog && each.isShowing());
  }

  private static int lineOf(JTextArea source) {
    try {
      return source.getLineOfOffset(source.getCaretPosition()) + 1;
    } catch (javax.swing.text.BadLocationException e) {
      return -1;
    }
  }
}
