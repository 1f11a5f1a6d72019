package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.text.JTextComponent;

/**
 * Words first, then controls: at the right of the words while these keep a readable width or stand
 * on one line, a single line of words at half their height; and in a line below them otherwise.
 */
final class WordedLayout extends PlacedLayout {
  private static final int LEAST_WORDS = 200;
  private static final int LINE_GAP = 4;
  private final int gap;

  /**
   * Words and controls.
   *
   * @param gap between components, in pixels
   */
  WordedLayout(int gap) {
    this.gap = gap;
  }

  @Override
  int place(Container parent, int width, boolean move) {
    if (parent.getComponentCount() == 0) {
      return 0;
    }
    Insets insets = parent.getInsets();
    Component words = parent.getComponent(0);
    int wide = 0;
    int high = 0;
    for (int i = 1; i < parent.getComponentCount(); i++) {
      Dimension wanted = parent.getComponent(i).getPreferredSize();
      wide += wanted.width + gap;
      high = Math.max(high, wanted.height);
    }
    boolean beside = width - wide >= Math.min(UIScale.scale(LEAST_WORDS), onOneLine(words));
    int room = Math.max(1, beside ? width - wide : width);
    int lines = Widths.heightAt(words, room);
    if (move) {
      int down = beside ? Math.max(0, (high - lines) / 2) : 0;
      words.setBounds(insets.left, insets.top + down, room, lines);
      int x = insets.left + (beside ? room + gap : 0);
      int y = insets.top + (beside ? 0 : lines + LINE_GAP);
      for (int i = 1; i < parent.getComponentCount(); i++) {
        Component control = parent.getComponent(i);
        Dimension wanted = control.getPreferredSize();
        control.setBounds(x, y, wanted.width, wanted.height);
        x += wanted.width + gap;
      }
    }
    return beside ? Math.max(lines, high) : lines + LINE_GAP + high;
  }

  private static int onOneLine(Component words) {
    return words instanceof JTextComponent text
        ? 1 + text.getFontMetrics(text.getFont()).stringWidth(text.getText())
        : Integer.MAX_VALUE;
  }
}
