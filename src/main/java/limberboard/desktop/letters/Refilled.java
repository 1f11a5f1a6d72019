package limberboard.desktop.letters;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import limberboard.desktop.parts.Later;

/** Fills a container anew so that who works in it by keyboard stays where they are. */
final class Refilled {
  private Refilled() {}

  /** Takes everything out, fills it, and gives the focus to what has the name of what had it. */
  static void fill(JComponent container, Runnable filling) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, container);
    Optional<String> name = Optional.ofNullable(within ? owner.getName() : null);
    container.removeAll();
    filling.run();
    container.revalidate();
    container.repaint();
    if (within) {
      Later.focus(name.flatMap(n -> named(container, n)).orElseGet(() -> firstOf(container)));
    }
  }

  private static Optional<Component> named(Container within, String name) {
    for (Component each : within.getComponents()) {
      if (name.equals(each.getName())) {
        return Optional.of(each);
      }
      Optional<Component> found =
          each instanceof Container nested ? named(nested, name) : Optional.empty();
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** The first that has a name and takes the focus; the container itself where there is none. */
  private static Component firstOf(Container within) {
    return first(within).orElse(within);
  }

  private static Optional<Component> first(Container within) {
    for (Component each : within.getComponents()) {
      if (each.isFocusable() && each.getName() != null) {
        return Optional.of(each);
      }
      Optional<Component> found =
          each instanceof Container nested ? first(nested) : Optional.empty();
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }
}
