package limberboard.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.Assumptions;

/** The window with the demo's boats, to be measured. Needs a display. */
final class MeasuredWindow {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);
  private final WindowAssembly desk;
  private final Painter painter;

  private MeasuredWindow(WindowAssembly desk, Painter painter) {
    this.desk = desk;
    this.painter = painter;
  }

  /**
   * Opens it; without a display the test is skipped.
   *
   * @param what what is not measured then
   */
  static MeasuredWindow open(Dimension size, String what) throws IOException {
    Assumptions.assumeFalse(
        GraphicsEnvironment.isHeadless(),
        "There is no display, so " + what + " is not measured. Run: xvfb-run -a mvn verify");
    WindowPictures pictures =
        new WindowPictures(new WorkspaceFolders(Path.of("")), TODAY, size, 100);
    WindowAssembly desk = OnEventThread.get(() -> pictures.desk(ThemeChoice.LIGHT));
    return new MeasuredWindow(desk, OnEventThread.get(() -> new Painter(desk, size)));
  }

  WindowAssembly desk() {
    return desk;
  }

  /** Lays out and paints, so many times that what depends on what was painted has come to rest. */
  void settle(int turns) throws IOException {
    for (int turn = 0; turn < turns; turn++) {
      OnEventThread.run(() -> desk.window().frame().getRootPane().revalidate());
      OnEventThread.run(() -> desk.window().frame().validate());
      painter.png();
    }
  }

  /** Everything of a kind that is showing within something. */
  static <C extends Component> List<C> all(Container within, Class<C> kind) {
    List<C> found = new ArrayList<>();
    for (Component each : within.getComponents()) {
      if (kind.isInstance(each) && each.isShowing()) {
        found.add(kind.cast(each));
      }
      if (each instanceof Container nested) {
        found.addAll(all(nested, kind));
      }
    }
    return found;
  }

  void close() throws IOException {
    OnEventThread.run(painter::close);
    OnEventThread.run(() -> Theme.apply(ThemeChoice.LIGHT, 100));
  }
}
