package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.JPanel;

/** Components side by side. */
public final class Row extends JPanel {
  private Row(LayoutManager layout, Component... components) {
    super(layout);
    setOpaque(false);
    for (Component component : components) {
      add(component);
    }
  }

  /**
   * A row in which one component takes the width that the others leave.
   *
   * @param gap between components, in pixels
   * @param growing which component grows, from 0
   * @param components from left to right
   */
  public static Row growing(int gap, int growing, Component... components) {
    return new Row(new RowLayout(gap, growing), components);
  }

  /**
   * Words with controls at their right, or below them where the words would be squeezed.
   *
   * @param gap between components, in pixels
   * @param words the words
   * @param controls from left to right
   */
  public static Row worded(int gap, Component words, Component... controls) {
    Row row = new Row(new WordedLayout(gap), words);
    for (Component control : controls) {
      row.add(control);
    }
    return row;
  }

  /**
   * A sign, a name and what is said of it; the names of several such rows are equally wide.
   *
   * @param sign a small drawing
   * @param name the name
   * @param words what is said
   */
  public static Row named(Component sign, Component name, Component words) {
    return new Row(new NamedLayout(), sign, name, words);
  }

  /**
   * Components in lines that wrap.
   *
   * @param gap between components and lines, in pixels
   * @param components from left to right
   */
  public static Row wrapping(int gap, Component... components) {
    return new Row(new WrapLayout(gap), components);
  }

  /** Always computed, because it depends on the width that is about to be given. */
  @Override
  public Dimension getPreferredSize() {
    return isPreferredSizeSet() ? super.getPreferredSize() : getLayout().preferredLayoutSize(this);
  }
}
