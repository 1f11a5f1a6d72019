package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.trace.Aspect;
import limberboard.desktop.trace.Stage;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.CautionsRead.Form;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Cautions in a trace, by keys: the question, the short form, what was read, and the whole text.
 */
class CautionsWindowTest extends RealWindow {
  private WorkspaceFolders folders;

  @Override
  @BeforeEach
  void open() throws IOException {
    folders = SmallWorkspace.copyTo(folder);
    rewrite(
        "symptoms/wet-locker.md",
        "first: [flooding]",
        "first: [{use: flooding, if: \"Is it rising?\"}, solvent]");
    rewrite(
        "symptoms/wet-locker.md", "    minutes: 5\n", "    minutes: 5\n    cautions: [solvent]\n");
    Files.writeString(
        folders.articles().resolve("cautions/solvent.md"),
        """
        ---
        title: Solvent
        danger: It burns, and its vapour makes you dizzy.
        short: {danger: It burns., rule: Two hatches open.}
        do: [Open two hatches., Put out every flame.]
        ---
        See to air first.
        """);
    window = SmallWindow.open(folders, new Memory(new Forgetful()));
  }

  private void rewrite(String page, String old, String now) throws IOException {
    Path file = folders.articles().resolve(page);
    String text = Files.readString(file);
    assertThat(text).contains(old);
    Files.writeString(file, text.replace(old, now));
  }

  private Stage stage() {
    return window.ask(() -> desk().trace().stage());
  }

  private List<String> in(Form form) {
    return window.ask(
        () ->
            desk().trace().read().in(form, desk().trace().cautions()).stream()
                .map(caution -> caution.id())
                .toList());
  }

  private List<String> texts() {
    return window.showing().stream()
        .filter(Wrapped.class::isInstance)
        .map(text -> window.ask(((Wrapped) text)::getText))
        .toList();
  }

  private void begin() {
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.act(() -> desk().navigator().trace("wet-locker"));
    window.until("the cautions are there", () -> desk().trace().stage() == Stage.CAUTIONS);
  }

  private void answered(int key) {
    window.press(key);
    window.press(KeyEvent.VK_ENTER);
    window.until("it is answered", () -> in(Form.QUESTION).isEmpty());
  }

  @Test
  void noFoldsTheEmergencyToALineThatAsksAgain() {
    begin();
    assertThat(in(Form.QUESTION)).containsExactly("flooding");
    answered(KeyEvent.VK_2);
    assertThat(in(Form.FOLDED)).containsExactly("flooding");
    assertThat(in(Form.SHORT)).containsExactly("solvent");
    window.press(KeyEvent.VK_F8);
    window.until("the first question", () -> stage() == Stage.CHECK);
    assertThat(texts()).anyMatch(text -> text.contains("Is it rising? No"));
    window.click("cautions-again");
    window.until("it is asked again", () -> in(Form.QUESTION).contains("flooding"));
  }

  @Test
  void yesShowsTheEmergencyInFullBeforeAnythingElse() {
    begin();
    answered(KeyEvent.VK_1);
    assertThat(in(Form.WHOLE)).containsExactly("flooding");
    assertThat(stage()).isEqualTo(Stage.CAUTIONS);
    assertThat(texts()).anyMatch(text -> text.contains("Call for help if the water gains."));
  }

  @Test
  void whatWasReadIsFoldedAndStaysSoWhenTheWindowIsOpenedAgain() throws IOException {
    begin();
    answered(KeyEvent.VK_2);
    window.press(KeyEvent.VK_F8);
    window.until("the first question", () -> stage() == Stage.CHECK);
    assertThat(in(Form.FOLDED)).containsExactlyInAnyOrder("flooding", "solvent");
    assertThat(texts()).anyMatch(text -> text.contains("Solvent (read)"));
    window.act(() -> desk().trace().answer("when", "after-rain"));
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until(
        "nothing is answered", () -> desk().trace().trace().orElseThrow().trail().isEmpty());
    assertThat(in(Form.FOLDED)).contains("solvent");
    window.act(() -> desk().trace().answer("when", "after-rain"));
    window.settle();
    window.close();
    Memory memory = new Memory(new Forgetful());
    memory.remember("boat", "knot");
    window = SmallWindow.open(folders, memory);
    window.until("it is offered", () -> !desk().trace().keptTraces().isEmpty());
    window.click("go-on-wet-locker");
    window.until("it goes on", () -> desk().trace().trace().isPresent());
    assertThat(in(Form.FOLDED)).containsExactly("solvent");
    assertThat(in(Form.QUESTION)).as("what was so then is asked anew").containsExactly("flooding");
    assertThat(stage()).isEqualTo(Stage.CAUTIONS);
  }

  @Test
  void f7ShowsTheWholeTextAndLeadsBack() {
    begin();
    answered(KeyEvent.VK_2);
    window.press(KeyEvent.VK_F8);
    window.until("the first question", () -> stage() == Stage.CHECK);
    window.press(KeyEvent.VK_F7);
    window.until("the whole text", () -> desk().aspects().now() == Aspect.CAUTIONS);
    assertThat(texts())
        .anyMatch(text -> text.contains("Put out every flame."))
        .anyMatch(text -> text.contains("The rescue service comes first."));
    window.press(KeyEvent.VK_F7);
    window.until("the step again", () -> desk().aspects().now() == Aspect.STEP);
    window.press(KeyEvent.VK_F7);
    window.press(KeyEvent.VK_ESCAPE);
    window.until("the step again", () -> desk().aspects().now() == Aspect.STEP);
  }
}
