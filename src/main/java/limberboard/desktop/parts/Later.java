package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Rectangle;
import javax.swing.JComponent;

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

  /** Scrolls until a component is in sight, once it has its place. */
  public static void show(JComponent component) {
    EventQueue.invokeLater(
        () ->
            component.scrollRectToVisible(
                new Rectangle(0, 0, component.getWidth(), component.getHeight())));
  }
}
