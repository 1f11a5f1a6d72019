package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;

/**
 * Components side by side: one takes the width that the others leave, and the row is as high as the
 * highest wants to be at its width.
 */
final class RowLayout extends InOrderLayout {
  private final int gap;
  private final int growing;

  /**
   * A row.
   *
   * @param gap between components, in pixels
   * @param growing which component takes the rest of the width, from 0
   */
  RowLayout(int gap, int growing) {
    this.gap = gap;
    this.growing = growing;
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    int width = Widths.inside(parent);
    int height = 0;
    int[] widths = widths(parent, width);
    for (int i = 0; i < widths.length; i++) {
      Component child = parent.getComponent(i);
      if (child.isVisible()) {
        height = Math.max(height, heightOf(child, widths[i], i));
      }
    }
    Insets insets = parent.getInsets();
    return new Dimension(width + insets.left + insets.right, height + insets.top + insets.bottom);
  }

  @Override
  public void layoutContainer(Container parent) {
    Insets insets = parent.getInsets();
    int[] widths = widths(parent, parent.getWidth() - insets.left - insets.right);
    int room = parent.getHeight() - insets.top - insets.bottom;
    int x = insets.left;
    for (int i = 0; i < widths.length; i++) {
      Component child = parent.getComponent(i);
      if (child.isVisible()) {
        int height = Math.min(room, heightOf(child, widths[i], i));
        int y = i == growing ? insets.top + Math.max(0, (room - height) / 2) : insets.top;
        child.setBounds(x, y, widths[i], height);
        x += widths[i] + gap;
      }
    }
  }

  private int heightOf(Component child, int width, int index) {
    return index == growing ? Widths.heightAt(child, width) : child.getPreferredSize().height;
  }

  private int[] widths(Container parent, int width) {
    int[] widths = new int[parent.getComponentCount()];
    int left = width;
    for (int i = 0; i < widths.length; i++) {
      Component child = parent.getComponent(i);
      if (child.isVisible()) {
        widths[i] = i == growing ? 0 : child.getPreferredSize().width;
        left -= widths[i] + (i == 0 ? 0 : gap);
      }
    }
    if (growing < widths.length) {
      widths[growing] = Math.max(1, left);
    }
    return widths;
  }
}
