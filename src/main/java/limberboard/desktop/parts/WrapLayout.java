package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;

/** Components in lines from the left, going on below where the width runs out. */
final class WrapLayout extends PlacedLayout {
  private final int gap;

  WrapLayout(int gap) {
    this.gap = gap;
  }

  @Override
  int place(Container parent, int width, boolean move) {
    Insets insets = parent.getInsets();
    int x = 0;
    int y = 0;
    List<Component> line = new ArrayList<>();
    for (Component child : parent.getComponents()) {
      if (child.isVisible()) {
        int wide = Math.min(child.getPreferredSize().width, width);
        if (x > 0 && x + wide > width) {
          y += finish(line, insets.top + y, move) + gap;
          x = 0;
        }
        if (move) {
          child.setBounds(insets.left + x, insets.top + y, wide, child.getPreferredSize().height);
        }
        line.add(child);
        x += wide + gap;
      }
    }
    return y + finish(line, insets.top + y, move);
  }

  /** Puts the components of a line at one middle, and says how high the line is. */
  private static int finish(List<Component> line, int top, boolean move) {
    int high = line.stream().mapToInt(child -> child.getPreferredSize().height).max().orElse(0);
    if (move) {
      line.forEach(child -> child.setLocation(child.getX(), top + (high - child.getHeight()) / 2));
    }
    line.clear();
    return high;
  }
}
