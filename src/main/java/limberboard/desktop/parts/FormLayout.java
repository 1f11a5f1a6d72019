package limberboard.desktop.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;

/**
 * A form: components come in pairs, a label and its field, one pair a line. Labels are as wide as
 * the widest, fields take the rest and are as high as they want at that width.
 */
final class FormLayout extends PlacedLayout {
  private static final int MOST_LABEL = 220;
  private static final int LEAST_FIELD = 150;
  private final int gap;

  FormLayout(int gap) {
    this.gap = gap;
  }

  @Override
  int place(Container parent, int width, boolean move) {
    Insets insets = parent.getInsets();
    int label = labelWidth(parent);
    int field = Math.max(60, width - label - gap);
    int y = 0;
    for (int i = 0; i + 1 < parent.getComponentCount(); i += 2) {
      Component name = parent.getComponent(i);
      Component input = parent.getComponent(i + 1);
      if (Form.isWide(name)) {
        int high = Widths.heightAt(name, width);
        if (move) {
          name.setBounds(insets.left, insets.top + y, width, high);
        }
        y += high + gap;
        continue;
      }
      if (field < UIScale.scale(LEAST_FIELD)) {
        y += stack(insets, name, input, y, width, move) + gap;
        continue;
      }
      int height = Widths.heightAt(input, field);
      int nameHeight = name.getPreferredSize().height;
      if (move) {
        int first = firstLine(input, height);
        name.setBounds(
            insets.left, insets.top + y + Math.max(0, (first - nameHeight) / 2), label, nameHeight);
        input.setBounds(insets.left + label + gap, insets.top + y, field, height);
      }
      y += Math.max(height, nameHeight) + gap;
    }
    return Math.max(0, y - gap);
  }

  /** Where there is little room the label stands above its field. */
  private static int stack(
      Insets insets, Component name, Component input, int y, int width, boolean move) {
    int nameHeight = name.getPreferredSize().height;
    int height = Widths.heightAt(input, width);
    if (move) {
      name.setBounds(insets.left, insets.top + y, width, nameHeight);
      input.setBounds(insets.left, insets.top + y + nameHeight + 2, width, height);
    }
    return nameHeight + 2 + height;
  }

  /** The height of a field without what stands below it. */
  private static int firstLine(Component input, int height) {
    boolean stacked = input instanceof Column column && column.getComponentCount() > 0;
    if (input instanceof Wrapped words) {
      return Math.min(height, words.getFontMetrics(words.getFont()).getHeight());
    }
    return stacked ? ((Column) input).getComponent(0).getPreferredSize().height : height;
  }

  private static int labelWidth(Container parent) {
    int widest = 0;
    for (int i = 0; i + 1 < parent.getComponentCount(); i += 2) {
      if (!Form.isWide(parent.getComponent(i))) {
        widest = Math.max(widest, parent.getComponent(i).getPreferredSize().width);
      }
    }
    return Math.min(widest, Math.max(MOST_LABEL, parent.getWidth() / 2));
  }
}
