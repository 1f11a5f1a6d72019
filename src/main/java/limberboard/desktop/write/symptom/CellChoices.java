package limberboard.desktop.write.symptom;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JLayeredPane;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.border.LineBorder;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.Scrolling;

/**
 * What can be chosen for a cell, below the line in which it is typed, in the window's layer for
 * such things. The line keeps the focus.
 */
final class CellChoices {
  private static final int MOST_HEIGHT = 340;
  private static final int LEAST_WIDTH = 360;
  private final JTextField field;
  private final JList<CellOffers.Offer> list = new JList<>();
  private final JPanel panel = new JPanel(new BorderLayout());

  CellChoices(JTextField field, Consumer<CellOffers.Offer> take) {
    this.field = field;
    list.setName("cell-choices");
    list.setFocusable(false);
    list.getAccessibleContext().setAccessibleName("What can be chosen");
    list.addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            chosen().ifPresent(take);
          }
        });
    panel.add(Scrolling.of(list));
    panel.setVisible(false);
  }

  /** Shows the offers; the one that was typed, or the first that fits what was, is chosen. */
  void show(List<CellOffers.Offer> offers, String typed) {
    JRootPane root = SwingUtilities.getRootPane(field);
    if (offers.isEmpty() || root == null) {
      hide();
      return;
    }
    DefaultListModel<CellOffers.Offer> model = new DefaultListModel<>();
    model.addAll(offers);
    list.setModel(model);
    int same = offers.stream().map(CellOffers.Offer::text).toList().indexOf(typed.strip());
    boolean open = typed.isBlank() || typed.endsWith(" ") || typed.endsWith(",");
    list.setSelectedIndex(same >= 0 ? same : open ? -1 : 0);
    place(root.getLayeredPane());
    list.ensureIndexIsVisible(Math.max(0, list.getSelectedIndex()));
  }

  private void place(JLayeredPane layers) {
    if (panel.getParent() != layers) {
      layers.add(panel, JLayeredPane.POPUP_LAYER);
      SwingUtilities.updateComponentTreeUI(panel);
    }
    Color edge = Palette.LINE.color();
    panel.setBorder(new LineBorder(edge, 1, true));
    list.setBackground(Palette.SHEET.color());
    Point below = SwingUtilities.convertPoint(field, 0, field.getHeight() + 2, layers);
    int width =
        Math.max(LEAST_WIDTH, Math.max(list.getPreferredSize().width + 24, field.getWidth() / 2));
    int room = Math.max(60, Math.min(MOST_HEIGHT, layers.getHeight() - below.y - 12));
    int height = Math.min(room, list.getPreferredSize().height + 6);
    panel.setBounds(below.x, below.y, Math.min(width, layers.getWidth() - below.x - 4), height);
    panel.setVisible(true);
    panel.validate();
    panel.repaint();
  }

  void hide() {
    list.clearSelection();
    panel.setVisible(false);
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
    return panel.isVisible() ? Optional.ofNullable(list.getSelectedValue()) : Optional.empty();
  }
}
