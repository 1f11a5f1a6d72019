package limberboard.desktop.parts;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.TransferHandler;

/**
 * Copies the entries of a list as they read on their cards: the selected one with Ctrl+C, all of
 * them from the context menu.
 */
final class CardCopies<T> extends TransferHandler {
  private final transient CardList<T> list;
  private final transient Function<? super T, Card> cards;

  private CardCopies(CardList<T> list, Function<? super T, Card> cards) {
    this.list = list;
    this.cards = cards;
  }

  /** Lets the entries of a list be copied. */
  static <T> void on(CardList<T> list, Function<? super T, Card> cards) {
    CardCopies<T> copies = new CardCopies<>(list, cards);
    list.setTransferHandler(copies);
    list.addMouseListener(copies.new Pointer());
    for (String key : List.of("shift F10", "CONTEXT_MENU")) {
      Keys.focused(list, key, copies::menuAtSelected);
    }
  }

  @Override
  public int getSourceActions(JComponent component) {
    return COPY;
  }

  @Override
  protected Transferable createTransferable(JComponent component) {
    return copied(list.selected().map(List::of).orElse(List.of()));
  }

  private Copied copied(List<T> entries) {
    return Copied.of(
        entries.stream()
            .map(entry -> cards.apply(entry).lines())
            .collect(Collectors.joining("\n\n")));
  }

  private JPopupMenu menu() {
    JPopupMenu menu = new JPopupMenu();
    add(menu, "Copy", "copy-entry", list.selected().map(List::of).orElse(List.of()));
    add(menu, "Copy the whole list", "copy-list", list.entries());
    return menu;
  }

  private void add(JPopupMenu menu, String title, String name, List<T> entries) {
    JMenuItem item = new JMenuItem(title);
    item.setName(name);
    item.setEnabled(!entries.isEmpty());
    item.addActionListener(e -> copied(entries).toClipboard());
    menu.add(item);
  }

  private void menuAtSelected() {
    int at = Math.max(0, list.getSelectedIndex());
    Rectangle box = list.getCellBounds(at, at);
    show(list, box == null ? new Point(8, 8) : new Point(box.x + 24, box.y + 24));
  }

  private void show(Component on, Point at) {
    menu().show(on, at.x, at.y);
  }

  private final class Pointer extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      popup(e);
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      popup(e);
    }

    private void popup(MouseEvent e) {
      if (e.isPopupTrigger()) {
        int index = list.locationToIndex(e.getPoint());
        if (index >= 0) {
          list.setSelectedIndex(index);
        }
        show(list, e.getPoint());
      }
    }
  }
}
