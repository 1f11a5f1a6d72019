package limberboard.desktop.window;

import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;

/** The screens there are now, which may not be those of last time. */
final class Screens {
  private static final int GRIP = 100;

  private Screens() {}

  /** Whether enough of a window would be seen there to take hold of it. */
  static boolean shows(Rectangle window) {
    for (GraphicsDevice screen :
        GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices()) {
      Rectangle seen = screen.getDefaultConfiguration().getBounds().intersection(window);
      if (seen.width >= GRIP && seen.height >= GRIP) {
        return true;
      }
    }
    return false;
  }
}
