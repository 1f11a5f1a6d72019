package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * Scroll panes as the window has them: up and down only, without a frame or ground of their own.
 * What has the focus stays in sight when what is around it grows or there is less room.
 */
public final class Scrolling {
  private Scrolling() {}

  public static JScrollPane of(Component content) {
    JScrollPane pane =
        new JScrollPane(
            content,
            JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED,
            JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.setOpaque(false);
    pane.getViewport().setOpaque(false);
    When.resized(content, () -> keepFocusInSight(pane.getViewport()));
    When.resized(pane.getViewport(), () -> keepFocusInSight(pane.getViewport()));
    return pane;
  }

  private static void keepFocusInSight(JViewport viewport) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    if (owner instanceof JComponent focused
        && focused != viewport.getView()
        && SwingUtilities.isDescendingFrom(focused, viewport)
        && focused.getHeight() <= viewport.getHeight()) {
      Later.show(focused);
    }
  }
}
