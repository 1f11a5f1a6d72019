package limberboard.desktop.write.symptom;

import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;

/** What can be chosen for a cell, below the line in which it is typed; the line keeps the focus. */
final class CellChoices {
  private static final int ROWS = 12;
  private final JTextField field;
  private final JList<CellOffers.Offer> list = new JList<>();
  private final JPopupMenu popup = new JPopupMenu();

  CellChoices(JTextField field, Consumer<CellOffers.Offer> take) {
    this.field = field;
    list.setName("cell-choices");
    list.setFocusable(false);
    list.getAccessibleContext().setAccessibleName("What can be chosen");
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            chosen().ifPresent(take);
          }
        });
    JScrollPane scroller = new JScrollPane(list);
    scroller.setBorder(BorderFactory.createEmptyBorder());
    popup.setFocusable(false);
    popup.add(scroller);
  }

  /** Shows the offers; the one that was typed, or the first that fits what was, is chosen. */
  void show(List<CellOffers.Offer> offers, String typed) {
    if (offers.isEmpty() || !field.isShowing()) {
      hide();
      return;
    }
    DefaultListModel<CellOffers.Offer> model = new DefaultListModel<>();
    model.addAll(offers);
    list.setModel(model);
    list.setVisibleRowCount(Math.min(ROWS, offers.size()));
    int same = offers.stream().map(CellOffers.Offer::text).toList().indexOf(typed.strip());
    boolean open = typed.isBlank() || typed.endsWith(" ") || typed.endsWith(",");
    list.setSelectedIndex(same >= 0 ? same : open ? -1 : 0);
    Dimension size = list.getPreferredScrollableViewportSize();
    popup.setPopupSize(Math.max(field.getWidth() / 2, size.width + 40), size.height + 12);
    if (!popup.isVisible()) {
      popup.show(field, 0, field.getHeight());
    }
    popup.revalidate();
    popup.repaint();
    list.ensureIndexIsVisible(Math.max(0, list.getSelectedIndex()));
  }

  void hide() {
    list.clearSelection();
    popup.setVisible(false);
  }

  /** Chooses the next or an earlier one; before the first, none. */
  void move(int by) {
    int to = Math.min(list.getModel().getSize() - 1, list.getSelectedIndex() + by);
    if (to < 0) {
      list.clearSelection();
    } else {
      list.setSelectedIndex(to);
      list.ensureIndexIsVisible(to);
    }
  }

  /** The chosen one, while there is a choice. */
  Optional<CellOffers.Offer> chosen() {
    return popup.isVisible() ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
  }
}
