package limberboard.desktop.window;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JPopupMenu;
import limberboard.desktop.parts.Buttons;

/** The one menu: everything the window can do, in groups, with its keys. */
final class WindowMenu {
  private final Supplier<Map<String, List<Command>>> groups;
  private final ViewMenu view;
  private final JButton button;

  /**
   * A menu.
   *
   * @param groups what can be done now, by the title of its group, in order
   * @param view how things are shown
   */
  WindowMenu(Supplier<Map<String, List<Command>>> groups, ViewMenu view) {
    this.groups = groups;
    this.view = view;
    button = Buttons.plain("Menu", this::open);
    button.setMnemonic('e');
    button.setName("menu");
    button.setToolTipText("Everything the window can do (F10)");
    button.getAccessibleContext().setAccessibleName("Menu: everything the window can do");
  }

  JButton button() {
    return button;
  }

  /** Opens it below its button. */
  void open() {
    JPopupMenu menu = menu();
    int x = button.getWidth() - menu.getPreferredSize().width;
    menu.show(button, x, button.getHeight());
  }

  private JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu("Menu");
    groups
        .get()
        .forEach(
            (title, commands) -> {
              JMenu group = group(title);
              commands.forEach(command -> group.add(command.item()));
              menu.add(group);
            });
    JMenu shown = group("View");
    view.fill(shown);
    menu.insert(shown, Math.min(2, menu.getComponentCount()));
    return menu;
  }

  private static JMenu group(String title) {
    JMenu group = new JMenu(title);
    group.setName("menu-" + title);
    group.setMnemonic(title.charAt(0));
    return group;
  }
}
