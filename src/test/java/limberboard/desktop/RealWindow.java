package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Path;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Opens the real window for each test, and holds afterwards that nothing was thrown and caught by
 * nobody and that nothing slow was done on the event thread. Needs a display; a virtual one will
 * do.
 */
@Timeout(180)
abstract class RealWindow {
  @TempDir Path folder;
  SmallWindow window;

  @BeforeAll
  static void components() {
    if (GraphicsEnvironment.isHeadless()) {
      System.out.println(
          "The window's tests are skipped: there is no display. Run them with: xvfb-run -a mvn"
              + " verify");
    }
    FailOnThreadViolationRepaintManager.install();
  }

  @AfterAll
  static void usual() {
    FailOnThreadViolationRepaintManager.uninstall();
  }

  @BeforeEach
  void open() throws IOException {
    window = SmallWindow.open(folder);
  }

  @AfterEach
  void close() {
    if (window != null) {
      try {
        assertThat(window.failures()).as("thrown and caught by nobody").isEmpty();
        assertThat(window.slowOnEventThread()).as("slow work on the event thread").isEmpty();
      } finally {
        window.close();
      }
    }
  }

  WindowAssembly desk() {
    return window.desk();
  }
}
