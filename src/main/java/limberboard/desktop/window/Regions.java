package limberboard.desktop.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import limberboard.desktop.parts.Sides;

/**
 * Moves the focus from region to region of the window, in a circle, also to one that lies on a tab
 * behind another.
 */
final class Regions {
  private final Supplier<List<JComponent>> regions;

  Regions(Supplier<List<JComponent>> regions) {
    this.regions = regions;
  }

  /** Goes to the next region (1) or the one before (-1). */
  void move(int by) {
    List<JComponent> all = regions.get().stream().filter(Sides::isWithinReach).toList();
    if (all.isEmpty()) {
      return;
    }
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    int now = -1;
    for (int i = 0; i < all.size(); i++) {
      if (owner != null && SwingUtilities.isDescendingFrom(owner, all.get(i))) {
        now = i;
      }
    }
    int start = now < 0 ? (by > 0 ? -1 : 0) : now;
    for (int step = 1; step <= all.size(); step++) {
      JComponent next = all.get(Math.floorMod(start + by * step, all.size()));
      if (!next.isShowing()) {
        Sides.bringForward(next);
      }
      if (focus(next)) {
        return;
      }
    }
  }

  /** Puts the focus into a region, on its first control that takes it. */
  static boolean focus(JComponent region) {
    if (region.isFocusable() && region.isEnabled() && region.getComponentCount() == 0) {
      return region.requestFocusInWindow();
    }
    Container root = region.getFocusCycleRootAncestor();
    if (root == null) {
      return false;
    }
    FocusTraversalPolicy policy = root.getFocusTraversalPolicy();
    Component next = region;
    for (int i = 0; i < 500 && next != null; i++) {
      next = policy.getComponentAfter(root, next);
      if (next != null && SwingUtilities.isDescendingFrom(next, region)) {
        return next.requestFocusInWindow();
      }
    }
    return false;
  }
}
