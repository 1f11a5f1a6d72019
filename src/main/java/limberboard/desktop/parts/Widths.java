package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.JViewport;

/** Heights that depend on widths. */
public final class Widths {
  private static final int UNKNOWN = 480;
  private static final int TALL = 20_000;
  private static final int LOW = 480;

  private Widths() {}

  /** Whether the window is so low that what stands above something else should be short. */
  public static boolean isInLowWindow(JComponent component) {
    JRootPane root = component.getRootPane();
    return root != null && root.getHeight() > 0 && root.getHeight() < UIScale.scale(LOW);
  }

  /** The width that a container has or, in a scroll pane, is about to get, without its insets. */
  static int inside(Container container) {
    int width =
        container.getParent() instanceof JViewport view ? view.getWidth() : container.getWidth();
    int insets = container.getInsets().left + container.getInsets().right;
    return Math.max(1, (width <= 0 ? UNKNOWN : width) - insets);
  }

  /**
   * The height that a column wants when it is this wide, found without making the column itself so
   * wide. What a scroll pane shows is measured in this way: the pane lays out anew each time that
   * it changes its size, and measuring while laying out would then never end.
   */
  static int contentHeightAt(Column column, int width) {
    Insets insets = column.getInsets();
    return ((ColumnLayout) column.getLayout())
            .heightOf(column, Math.max(1, width - insets.left - insets.right))
        + insets.top
        + insets.bottom;
  }

  /** The height that a component wants when it is this wide. */
  static int heightAt(Component component, int width) {
    if (component.isPreferredSizeSet()) {
      return component.getPreferredSize().height;
    }
    if (component.getWidth() != width) {
      component.setSize(width, component.getHeight() == 0 ? TALL : component.getHeight());
    }
    Dimension preferred = component.getPreferredSize();
    return preferred.height;
  }
}
