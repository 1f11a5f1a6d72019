package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;

/** Stacks components, each as wide as the container and as high as it wants at that width. */
final class ColumnLayout extends InOrderLayout {
  private final int gap;
  private int most = Integer.MAX_VALUE;

  ColumnLayout(int gap) {
    this.gap = gap;
  }

  void atMost(int width) {
    most = width;
  }

  /** The width that components get in this much room. */
  private int narrowed(int room) {
    return most == Integer.MAX_VALUE ? room : Math.min(room, UIScale.scale(most));
  }

  @Override
  public Dimension preferredLayoutSize(Container parent) {
    int room = Widths.inside(parent);
    int widest = narrowed(room);
    for (Component child : parent.getComponents()) {
      if (child.isVisible()) {
        widest = Math.max(widest, child.getMinimumSize().width);
      }
    }
    Insets insets = parent.getInsets();
    return new Dimension(
        widest + insets.left + insets.right, heightOf(parent, room) + insets.top + insets.bottom);
  }

  /** The height of all components where there is so much room, without the container's insets. */
  int heightOf(Container parent, int room) {
    int width = narrowed(room);
    int height = 0;
    for (Component child : parent.getComponents()) {
      if (child.isVisible()) {
        height += (height == 0 ? 0 : gap) + Widths.heightAt(child, width);
      }
    }
    return height;
  }

  @Override
  public void layoutContainer(Container parent) {
    Insets insets = parent.getInsets();
    int width = narrowed(Math.max(1, parent.getWidth() - insets.left - insets.right));
    int y = insets.top;
    for (Component child : parent.getComponents()) {
      if (child.isVisible()) {
        int height = Widths.heightAt(child, width);
        child.setBounds(insets.left, y, width, height);
        y += height + gap;
      }
    }
  }

  @Override
  public Dimension minimumLayoutSize(Container parent) {
    Insets insets = parent.getInsets();
    return new Dimension(insets.left + insets.right + 1, insets.top + insets.bottom + 1);
  }
}
