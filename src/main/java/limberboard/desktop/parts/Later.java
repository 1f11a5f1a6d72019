package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/** What waits until what is now happening has been laid out and the focus has settled. */
public final class Later {
  private Later() {}

  /** Does something. */
  public static void run(Runnable action) {
    EventQueue.invokeLater(action);
  }

  /** Gives a component the focus, after whatever hides or disables the one that has it. */
  public static void focus(Component component) {
    EventQueue.invokeLater(component::requestFocusInWindow);
  }

  /**
   * Scrolls until a component is in sight, once it has its place; of one that is higher than the
   * room for it, the top. Asked of what it lies in, since a text field scrolls its own text and
   * nothing else.
   */
  public static void show(JComponent component) {
    EventQueue.invokeLater(
        () -> {
          if (component.getParent() instanceof JComponent around) {
            Rectangle top = top(component);
            top.translate(component.getX(), component.getY());
            around.scrollRectToVisible(top);
          }
        });
  }

  private static Rectangle top(JComponent component) {
    Container viewport = SwingUtilities.getAncestorOfClass(JViewport.class, component);
    int room = viewport == null ? component.getHeight() : viewport.getHeight();
    return new Rectangle(0, 0, component.getWidth(), Math.min(component.getHeight(), room));
  }
}
