package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.support.SmallPrinter;
import limberboard.desktop.trace.Stage;
import limberboard.trace.NextStep;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An owner's whole job with real key events and nothing else: find the boat by her hull number,
 * trace a fault to its mend, copy the step for a letter, log the mend, correct the line, undo, read
 * and print the page, enter a new boat. Needs a display; a virtual one will do.
 */
class WholeJobWindowTest {
  private static final int CTRL = KeyEvent.VK_CONTROL;
  private static final int MOST_TABS = 60;
  private static final int MOST_ITEMS = 12;
  private static final List<String> HOSE = List.of("after-washing", "turns", "holds");
  @TempDir Path folder;
  private SmallWindow window;

  @BeforeAll
  static void watchThreads() {
    FailOnThreadViolationRepaintManager.install();
  }

  @AfterAll
  static void usual() {
    FailOnThreadViolationRepaintManager.uninstall();
  }

  @ParameterizedTest
  @CsvSource({
    "1024, 700, 100",
    "1024, 700, 150",
    "1024, 700, 200",
    "1280, 800, 100",
    "1280, 800, 150",
    "1280, 800, 200",
    "1920, 1080, 100",
    "1920, 1080, 150",
    "1920, 1080, 200"
  })
  void theWholeJobIsDoneByKeyboardAlone(int width, int height, int percent) throws IOException {
    Memory memory = new Memory(new Forgetful());
    memory.remember("text-percent", Integer.toString(percent));
    window = SmallWindow.open(folder, memory);
    try {
      window.act(() -> window.desk().window().frame().setSize(new Dimension(width, height)));
      findTheBoatByHerHullNumber();
      traceToTheMend();
      logTheMendAndCorrectTheLine();
      printThePage();
      enterANewBoat();
      assertThat(window.failures()).as("thrown and caught by nobody").isEmpty();
      assertThat(window.slowOnEventThread()).as("slow work on the event thread").isEmpty();
    } finally {
      window.close();
    }
  }

  private void findTheBoatByHerHullNumber() {
    window.press(KeyEvent.VK_L, CTRL);
    window.type("hull 7");
    window.until(
        "she is found", () -> desk().search().isUpToDate() && !desk().search().found().isEmpty());
    window.press(KeyEvent.VK_ENTER);
    window.until(
        "Knot is the working boat",
        () -> desk().session().boat().map(boat -> boat.id()).equals(Optional.of("knot")));
  }

  private void traceToTheMend() {
    window.press(KeyEvent.VK_1, CTRL);
    tabTo("symptoms");
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_DOWN);
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.CAUTIONS);
    tabTo("cautions-read");
    window.press(KeyEvent.VK_ENTER);
    untilStage(Stage.CHECK);
    copyTheStep();
    for (int i = 0; i < HOSE.size() && stage() == Stage.CHECK; i++) {
      int before = answers();
      answer();
      window.until("the answer is noted", () -> answers() == before + 1);
      window.until("the next step is weighed", () -> desk().trace().step().isPresent());
    }
    untilStage(Stage.MEND);
  }

  private void copyTheStep() {
    String question = window.ask(() -> desk().trace().step().orElseThrow().text());
    if (window.shows("copy-answer")) {
      tabTo("copy-answer");
      window.press(KeyEvent.VK_SPACE);
    } else {
      tabTo("trace-more");
      window.press(KeyEvent.VK_SPACE);
      window.until("the menu is open", () -> window.shows("copy-answer"));
      for (int i = 0; i < MOST_ITEMS && !chosen().equals("copy-answer"); i++) {
        window.press(KeyEvent.VK_DOWN);
      }
      assertThat(chosen()).isEqualTo("copy-answer");
      window.press(KeyEvent.VK_ENTER);
    }
    window.until("the step is copied", () -> window.copied().contains(question));
    assertThat(window.copied()).contains("Water that gains on the pump sinks the boat");
  }

  /** The name of the menu's item that Enter would take. */
  private String chosen() {
    return window.ask(
        () -> {
          MenuElement[] path = MenuSelectionManager.defaultManager().getSelectedPath();
          String name = path.length == 0 ? null : path[path.length - 1].getComponent().getName();
          return name == null ? "" : name;
        });
  }

  private void answer() {
    List<String> offered =
        window.ask(() -> desk().trace().step().orElseThrow()) instanceof NextStep.DoCheck step
            ? step.check().check().answers()
            : List.of();
    String answer = offered.stream().filter(HOSE::contains).findFirst().orElseThrow();
    tabTo("answer-" + answer);
    window.press(KeyEvent.VK_ENTER);
  }

  private void logTheMendAndCorrectTheLine() throws IOException {
    String before = log();
    tabTo("it-is-mended");
    window.press(KeyEvent.VK_SPACE);
    untilStage(Stage.MENDED);
    tabTo("write-mended");
    window.press(KeyEvent.VK_ENTER);
    window.until("it is written", () -> desk().log().toUndo().isPresent());
    assertThat(log()).startsWith(before + "2026-05-20,tighten-hose,");
    window.press(KeyEvent.VK_3, CTRL);
    window.press(KeyEvent.VK_G, KeyEvent.VK_ALT);
    untilFocusIs("upkeep-log-table");
    window.press(KeyEvent.VK_HOME, CTRL);
    window.press(KeyEvent.VK_F2);
    untilFocusIs("log-day");
    window.press(KeyEvent.VK_A, CTRL);
    window.type("18 may 26");
    window.press(KeyEvent.VK_ENTER);
    window.until("the line is corrected", () -> logIs(before + "2026-05-18,tighten-hose,"));
    untilFocusIs("upkeep-log-table");
    window.press(KeyEvent.VK_Z, CTRL);
    window.until("the correction is undone", () -> logIs(before + "2026-05-20,tighten-hose,"));
    window.press(KeyEvent.VK_Z, CTRL);
    window.until("the entry is undone", () -> text().equals(before));
  }

  private void printThePage() throws IOException {
    window.press(KeyEvent.VK_L, CTRL);
    window.press(KeyEvent.VK_A, CTRL);
    window.type("Replace the locker gasket");
    window.until(
        "the page is found",
        () ->
            desk().search().isUpToDate()
                && !desk().search().found().isEmpty()
                && desk().search().found().get(0).target().id().equals("replace-gasket"));
    window.press(KeyEvent.VK_ENTER);
    window.until("the page is shown", () -> window.shows("page"));
    tabTo("page");
    window.press(KeyEvent.VK_P, CTRL);
    window.until("it is printed", () -> !window.printer().jobs().isEmpty());
    SmallPrinter.Job job = window.printer().jobs().get(0);
    try (PDDocument pdf = Loader.loadPDF(job.pdf())) {
      assertThat(new PDFTextStripper().getText(pdf)).contains("Replace the locker gasket");
    }
  }

  private void enterANewBoat() throws IOException {
    window.press(KeyEvent.VK_N, CTRL);
    untilFocusIs("boat-NAME");
    window.type("Ruff");
    tabTo("boat-MODEL");
    window.press(KeyEvent.VK_DOWN);
    tabTo("boat-HULL");
    window.type("31");
    tabTo("boat-BUILT");
    window.type("2018");
    window.press(KeyEvent.VK_S, CTRL);
    Path file = window.folders().boats().resolve("ruff/boat.yaml");
    window.until("she is entered", () -> Files.isRegularFile(file));
    assertThat(Files.readString(file)).contains("name: Ruff").contains("hull: 31");
  }

  private void tabTo(String name) {
    for (int i = 0; i < MOST_TABS; i++) {
      if (focus().equals(name)) {
        return;
      }
      window.press(KeyEvent.VK_TAB);
    }
    assertThat(focus()).as("reached by Tab").isEqualTo(name);
  }

  private String focus() {
    return window.ask(
        () -> {
          Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
          return owner == null || owner.getName() == null ? "" : owner.getName();
        });
  }

  private void untilFocusIs(String name) {
    window.until("the focus is on " + name, () -> focus().equals(name));
  }

  private void untilStage(Stage stage) {
    window.until("stage " + stage, () -> stage() == stage);
  }

  private Stage stage() {
    return window.ask(() -> desk().trace().stage());
  }

  private int answers() {
    return window.ask(() -> desk().trace().trace().map(trace -> trace.trail().size()).orElse(0));
  }

  private String log() throws IOException {
    return Files.readString(window.folders().boats().resolve("knot/log.csv"));
  }

  private String text() {
    try {
      return log();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private boolean logIs(String start) {
    return text().startsWith(start);
  }

  private WindowAssembly desk() {
    return window.desk();
  }
}
