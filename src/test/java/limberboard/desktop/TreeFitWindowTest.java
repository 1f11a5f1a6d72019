package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.trace.Stage;
import limberboard.desktop.tree.TreeCanvas;
import limberboard.desktop.tree.TreeWalk;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The trees of all symptoms of the demo fitted into the real window and unfolded, by keyboard.
 * Needs a display; a virtual one will do.
 */
class TreeFitWindowTest {
  private static final List<Dimension> SIZES =
      List.of(new Dimension(1024, 700), new Dimension(1280, 800));

  /** Below it letters of thirteen pixels have less than six. */
  private static final double LEGIBLE = 0.45;

  /** The largest trees take their time on a slow machine. */
  private static final int MOST_PAUSES = 400;

  private static final int PAUSE_MILLIS = 100;

  @TempDir static Path folder;
  private static SmallWindow window;

  @BeforeAll
  static void open() throws IOException {
    for (String part : List.of("articles", "index", "demo-boats")) {
      copy(Path.of(part), folder.resolve(part));
    }
    window = SmallWindow.open(new WorkspaceFolders(folder), new Memory(new Forgetful()));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Files.copy(each, to.resolve(from.relativize(each)));
      }
    }
  }

  @AfterAll
  static void close() {
    if (window != null) {
      window.close();
    }
  }

  @TestFactory
  Stream<DynamicTest> fitFitsAndUnfoldUnfoldsTheTreeOf() {
    Workspace workspace = window.ask(() -> window.desk().session().workspace());
    List<Page<Symptom>> symptoms = workspace.library().all(Symptom.class);
    assertThat(symptoms).hasSizeGreaterThan(10);
    return symptoms.stream()
        .map(page -> DynamicTest.dynamicTest(page.id(), () -> holds(page, boat(workspace, page))));
  }

  private static Boat boat(Workspace workspace, Page<Symptom> page) {
    return workspace.boats().stream()
        .filter(boat -> new Fitting(boat, window.desk().session().today()).fits(page.head().fits()))
        .findFirst()
        .orElseThrow();
  }

  private static void holds(Page<Symptom> page, Boat boat) {
    TreeCanvas view = look(page, boat);
    for (Dimension size : SIZES) {
      window.act(() -> window.desk().window().frame().setSize(size));
      window.focus("tree");
      window.press(KeyEvent.VK_F);
      fits(view);
      window.press(KeyEvent.VK_U);
      assertThat(visible()).isEqualTo(walk().tree().forks().size());
      window.press(KeyEvent.VK_F);
      fits(view);
      window.press(KeyEvent.VK_U);
      assertThat(visible()).isEqualTo(walk().tree().forks().size());
      window.act(() -> walk().foldAgain());
    }
  }

  private static TreeCanvas look(Page<Symptom> page, Boat boat) {
    window.act(() -> window.desk().session().choose(Optional.of(boat.id())));
    window.act(() -> window.desk().navigator().trace(page.id()));
    window.until("it is begun", () -> window.desk().trace().trace().isPresent());
    window.act(
        () -> {
          if (window.desk().trace().stage() == Stage.CAUTIONS) {
            window.desk().trace().cautions().stream()
                .filter(caution -> caution.question().isPresent())
                .forEach(caution -> window.desk().trace().answerEmergency(caution, false));
            window.desk().trace().cautionsRead();
          }
        });
    window.press(KeyEvent.VK_W, KeyEvent.VK_ALT);
    for (int i = 0; i < MOST_PAUSES && !isGrown(page); i++) {
      Pause.pause(PAUSE_MILLIS);
    }
    window.until("its tree has grown", () -> isGrown(page));
    return window.find("tree", TreeCanvas.class);
  }

  private static boolean isGrown(Page<Symptom> page) {
    return window.ask(
        () ->
            window.desk().aspects().tree().walk().stream()
                .anyMatch(walk -> walk.tree().from().fault().page().id().equals(page.id())));
  }

  private static TreeWalk walk() {
    return window.ask(() -> window.desk().aspects().tree().walk().orElseThrow());
  }

  private static int visible() {
    return window.ask(() -> walk().visible().size());
  }

  /** Everything is in sight, and where that is too small to be read, it is said. */
  private static void fits(TreeCanvas view) {
    Dimension room =
        window.ask(
            () ->
                ((JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, view))
                    .getExtentSize());
    assertThat(window.ask(() -> view.getVisibleRect().getSize()))
        .isEqualTo(window.ask(view::getSize))
        .isEqualTo(room);
    assertThat(window.ask(view::getPreferredSize).width).isLessThanOrEqualTo(room.width);
    assertThat(window.ask(view::getPreferredSize).height).isLessThanOrEqualTo(room.height);
    String scale = labels().stream().filter(text -> text.contains(" %")).findFirst().orElseThrow();
    double share = Integer.parseInt(scale.replaceAll("[^0-9]", "")) / 100.0;
    assertThat(scale.endsWith(", too small to read")).as(scale).isEqualTo(share < LEGIBLE);
  }

  private static List<String> labels() {
    List<String> texts = new ArrayList<>();
    for (var one : window.showing()) {
      if (one instanceof JLabel label && label.getText() != null) {
        texts.add(window.ask(label::getText));
      }
    }
    return texts;
  }
}
