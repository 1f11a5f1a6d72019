package limberboard.desktop.window;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import limberboard.desktop.parts.Keys;

/**
 * Something the window can do, with the keys that do it and a line in its menu.
 *
 * @param title what a person reads
 * @param keys keys as {@link Keys} reads them, the one that is shown first; may be empty
 * @param action what is done
 */
record Command(String title, List<String> keys, Runnable action) {
  Command {
    keys = List.copyOf(keys);
  }

  static Command of(String title, String key, Runnable action) {
    return new Command(title, List.of(key), action);
  }

  /** Makes the keys work in the whole window. */
  void bind(JComponent root) {
    keys.forEach(key -> Keys.everywhere(root, key, action));
  }

  /** Its line in a menu; the key is shown there, and works without it. */
  JMenuItem item() {
    JMenuItem item = new JMenuItem(title);
    item.setName("menu-" + title);
    keys.stream().findFirst().map(Keys::stroke).ifPresent(item::setAccelerator);
    item.addActionListener(e -> action.run());
    return item;
  }
}
