package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * A layout that follows from the order of the components alone, and can be made as small as need
 * be.
 */
abstract class InOrderLayout implements LayoutManager {
  @Override
  public Dimension minimumLayoutSize(Container parent) {
    return new Dimension(1, 1);
  }

  @Override
  public final void addLayoutComponent(String name, Component component) {
    // the order decides
  }

  @Override
  public final void removeLayoutComponent(Component component) {
    // the order decides
  }
}
