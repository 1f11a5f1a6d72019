package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A round, whose work is done at once, marked done and taken back with the keyboard. */
class RoundWindowTest extends RealWindow {
  private static final String LOG = "date,work,engine-hours,note\n2014-05-01,launched,,\n";

  @Override
  @BeforeEach
  void open() throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    Files.writeString(folder.resolve("boats/knot/log.csv"), LOG);
    page("look-at-hoses", "interval: {every: P1Y, left-undone: sinks, need: must}");
    page("look-at-drains", "interval: {every: P1Y, left-undone: sinks, need: must}");
    page(
        "water-round",
        "interval: {every: P1Y, left-undone: sinks, need: must}\n"
            + "round: [{do: look-at-hoses}, {do: look-at-drains}]");
    window = SmallWindow.open(folders, new Memory(new Forgetful()));
    window.act(() -> desk().session().choose(Optional.of("knot")));
    window.press(KeyEvent.VK_U, KeyEvent.VK_ALT);
    window.until("what is due is there", () -> desk().upkeep().upkeep().isPresent());
  }

  private void page(String id, String how) throws IOException {
    Path file = folder.resolve("articles/procedures/" + id + ".md");
    String head =
        """
        ---
        title: %s
        system: plumbing
        work: inspect
        skill: owner
        minutes: 10
        look-for: {good: Firm., bad: Loose.}
        %s
        ---
        1. Do it.
        """;
    Files.writeString(file, head.formatted(id.replace('-', ' '), how));
  }

  private String log() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  @Test
  void allOfItIsWrittenAndTakenBackInOneStep() throws IOException {
    window.press(KeyEvent.VK_M, KeyEvent.VK_ALT);
    window.until("the form is there", () -> window.shows("write-done"));
    window.focus("write-done");
    window.press(KeyEvent.VK_ENTER);
    window.until("all three are in the log", () -> lines() == 4);
    assertThat(log())
        .contains(",water-round,", ",look-at-hoses,", ",look-at-drains,")
        .startsWith(LOG);
    window.focus("due-coming");
    window.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
    window.until("all three are out again", () -> lines() == 1);
    assertThat(log()).isEqualTo(LOG);
    window.focus("due");
    window.press(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
    window.until("all three are in it once more", () -> lines() == 4);
    assertThat(window.slowOnEventThread()).isEmpty();
  }

  private int lines() {
    try {
      return (int) log().lines().count() - 1;
    } catch (IOException e) {
      return -1;
    }
  }
}
