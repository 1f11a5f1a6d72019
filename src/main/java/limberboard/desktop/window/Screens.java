package limberboard.desktop.window;

import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The screens there are now, which may not be those of last time. All sizes are those of the
 * window, not of the screen's own dots, so that a screen of twofold scaling counts half.
 */
final class Screens {
  private static final int GRIP = 100;

  private Screens() {}

  /** Whether enough of a window would be seen to take hold of it. */
  static boolean shows(Rectangle window) {
    return all().anyMatch(screen -> grips(screen, window));
  }

  private static boolean grips(Rectangle screen, Rectangle window) {
    Rectangle seen = screen.intersection(window);
    return seen.width >= GRIP && seen.height >= GRIP;
  }

  private static Stream<Rectangle> all() {
    return Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
        .map(GraphicsDevice::getDefaultConfiguration)
        .map(Screens::usable);
  }

  /** What a window can use of the screen it is on: without task bars and the like. */
  static Rectangle usable(Window window) {
    return usable(window.getGraphicsConfiguration());
  }

  private static Rectangle usable(GraphicsConfiguration screen) {
    Rectangle bounds = screen.getBounds();
    Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(screen);
    return new Rectangle(
        bounds.x + taken.left,
        bounds.y + taken.top,
        bounds.width - taken.left - taken.right,
        bounds.height - taken.top - taken.bottom);
  }

  /** Where a window is to stand: where it stood, if that can be seen, otherwise in the middle. */
  static Rectangle place(Window window, Optional<Rectangle> remembered, Dimension usual) {
    Optional<Rectangle> known = remembered.filter(Screens::shows);
    Rectangle room = known.map(Screens::around).orElseGet(() -> usable(window));
    return fitted(known.orElseGet(() -> middle(room, usual)), room);
  }

  private static Rectangle around(Rectangle window) {
    return all()
        .filter(screen -> grips(screen, window))
        .max(Comparator.comparingInt(screen -> area(screen.intersection(window))))
        .orElseThrow();
  }

  private static int area(Rectangle rectangle) {
    return rectangle.width * rectangle.height;
  }

  private static Rectangle middle(Rectangle room, Dimension size) {
    return new Rectangle(
        room.x + (room.width - size.width) / 2,
        room.y + (room.height - size.height) / 2,
        size.width,
        size.height);
  }

  /** A window's place moved and cut so that it lies within a room. */
  static Rectangle fitted(Rectangle window, Rectangle room) {
    int width = Math.min(window.width, room.width);
    int height = Math.min(window.height, room.height);
    int x = Math.max(room.x, Math.min(window.x, room.x + room.width - width));
    int y = Math.max(room.y, Math.min(window.y, room.y + room.height - height));
    return new Rectangle(x, y, width, height);
  }

  /** The least size of a window: never more than there is room for. */
  static Dimension least(Dimension wanted, Rectangle room) {
    return new Dimension(Math.min(wanted.width, room.width), Math.min(wanted.height, room.height));
  }
}
