package limberboard.desktop.read;

import java.awt.Point;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;

/** The context menu of a page. */
final class PageMenu {
  private final PageView view;
  private final List<PageAction> actions = new ArrayList<>();
  private final Runnable find;

  PageMenu(PageView view, Runnable find) {
    this.view = view;
    this.find = find;
  }

  void offer(PageAction action) {
    actions.add(action);
  }

  /** Brings it up at a point of the page. */
  void show(Point at) {
    menu().show(view, at.x, at.y);
  }

  /** The menu as it stands now. */
  JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu("Page");
    JMenuItem copy = item(new PageAction("Copy", "control C", view::copy));
    copy.setEnabled(!view.selection().isEmpty());
    menu.add(copy);
    menu.add(item(new PageAction("Select all", "control A", view.selection()::all)));
    menu.add(item(new PageAction("Find …", "control F", find)));
    if (!actions.isEmpty()) {
      menu.addSeparator();
    }
    actions.forEach(action -> menu.add(item(action)));
    return menu;
  }

  private static JMenuItem item(PageAction action) {
    JMenuItem item = new JMenuItem(action.title());
    item.setAccelerator(KeyStroke.getKeyStroke(action.key()));
    item.addActionListener(e -> action.action().run());
    return item;
  }
}
