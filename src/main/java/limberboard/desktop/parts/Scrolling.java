package limberboard.desktop.parts;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;

/**
 * Scroll panes as the window has them: up and down only, without a frame or ground of their own.
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
    return pane;
  }
}
