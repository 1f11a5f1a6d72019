package limberboard.desktop.window;

import java.util.Arrays;
import javax.swing.JFrame;

/**
 * A frame that is empty once it is closed. When the look changes, Swing brings it to windows that
 * were closed, too, which enters the keys of all they show with Swing's keyboard manager once more,
 * and that holds the window and all behind it for as long as the program runs.
 */
final class OnceFrame extends JFrame {
  private static final long serialVersionUID = 1L;

  OnceFrame(String title) {
    super(title);
  }

  @Override
  public void dispose() {
    super.dispose();
    setRootPane(createRootPane());
    Arrays.stream(getWindowListeners()).forEach(this::removeWindowListener);
  }
}
