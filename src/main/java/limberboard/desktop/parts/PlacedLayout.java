package limberboard.desktop.parts;

import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;

/** A layout whose height follows from its width: what places the components also measures them. */
abstract class PlacedLayout extends InOrderLayout {
  @Override
  public final Dimension preferredLayoutSize(Container parent) {
    Insets insets = parent.getInsets();
    int width = Widths.inside(parent);
    return new Dimension(
        width + insets.left + insets.right,
        place(parent, width, false) + insets.top + insets.bottom);
  }

  @Override
  public final void layoutContainer(Container parent) {
    Insets insets = parent.getInsets();
    place(parent, parent.getWidth() - insets.left - insets.right, true);
  }

  /**
   * Places the components, or only measures them.
   *
   * @param width within the insets, in pixels
   * @param move whether they are placed
   * @return the height they take, without the insets
   */
  abstract int place(Container parent, int width, boolean move);
}
