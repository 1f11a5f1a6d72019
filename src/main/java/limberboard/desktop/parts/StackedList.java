package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/**
 * A list with something above and below it that stays in sight while the list scrolls; where there
 * is little height, all of it scrolls together, so that the list is never squeezed to nothing.
 */
public final class StackedList extends JPanel {
  private static final int LEAST_HEIGHT = 420;
  private final Column above;
  private final CardList<?> list;
  private final Column below;
  private boolean low;

  /**
   * A list.
   *
   * @param above above it
   * @param list the list
   * @param below below it
   */
  public StackedList(Column above, CardList<?> list, Column below) {
    super(new BorderLayout(0, 4));
    this.above = above;
    this.list = list;
    this.below = below;
    setOpaque(false);
    arrange(false);
    When.resized(
        this,
        () -> {
          boolean wanted = getHeight() < UIScale.scale(LEAST_HEIGHT);
          if (wanted != low) {
            arrange(wanted);
          }
        });
  }

  private void arrange(boolean together) {
    low = together;
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, this);
    removeAll();
    if (together) {
      Column all = new Column(4);
      all.add(above);
      all.add(list);
      all.add(below);
      add(all.scrolling());
    } else {
      add(above, BorderLayout.NORTH);
      add(list.scrolling(), BorderLayout.CENTER);
      add(below, BorderLayout.SOUTH);
    }
    list.refreshHeights();
    if (within) {
      Later.focus(owner);
    }
    revalidate();
    repaint();
  }
}
