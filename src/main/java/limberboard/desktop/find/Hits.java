package limberboard.desktop.find;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Point;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import javax.swing.border.LineBorder;
import limberboard.desktop.look.Palette;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;

/** The hits below the search field, in the window's layer for such things. */
final class Hits {
  private static final int MOST_HEIGHT = 520;
  private static final int LEAST_WIDTH = 420;
  private final SearchModel model;
  private final JComponent field;
  private final CardList<Found> list;
  private final Wrapped words = Text.quiet("");
  private final Column head = new Column(0);
  private final JPanel panel = new Panel();
  private final JScrollPane scroller;
  private boolean wanted;

  Hits(SearchModel model, JComponent field, Consumer<Found> choose) {
    this.model = model;
    this.field = field;
    this.list = new CardList<Found>("What was found", Found::card).onChoose(choose);
    list.setFocusable(false);
    list.setName("hits");
    scroller = list.scrolling();
    head.padded(8, 14, 4, 14);
    head.add(words);
    panel.add(head, BorderLayout.NORTH);
    panel.add(scroller, BorderLayout.CENTER);
    model.onChange(this::refresh);
    When.resized(
        field,
        () -> {
          if (isShown()) {
            place();
          }
        });
  }

  /** From now on hits are shown when there are any. */
  void begin() {
    wanted = true;
    list.clearSelection();
  }

  void move(int by) {
    if (!isShown()) {
      wanted = true;
      refresh();
    }
    list.move(by);
  }

  Optional<Found> selected() {
    return isShown() ? list.selected() : Optional.empty();
  }

  boolean isShown() {
    return panel.getParent() != null && panel.isVisible();
  }

  boolean contains(Component component) {
    return component != null && SwingUtilities.isDescendingFrom(component, panel);
  }

  void hide() {
    wanted = false;
    panel.setVisible(false);
    list.clearSelection();
  }

  void refresh() {
    list.show(model.found());
    if (!wanted || model.text().isBlank()) {
      hide();
      return;
    }
    words.setText(words());
    head.setVisible(!words.getText().isEmpty());
    place();
  }

  private String words() {
    if (!model.isReady()) {
      return "The library is still being read; the search begins by itself when it is there.";
    }
    if (!model.isUpToDate()) {
      return model.found().isEmpty() ? "Searching …" : "";
    }
    if (model.found().isEmpty()) {
      return "Nothing found for “"
          + model.text().strip()
          + "”. Fewer words or another word may find it.";
    }
    return model.didYouMean().map(better -> "Also looked for “" + better + "”").orElse("");
  }

  private void place() {
    JRootPane root = SwingUtilities.getRootPane(field);
    if (root == null) {
      return;
    }
    JLayeredPane layers = root.getLayeredPane();
    if (panel.getParent() != layers) {
      layers.add(panel, JLayeredPane.POPUP_LAYER);
    }
    Point below = SwingUtilities.convertPoint(field, 0, field.getHeight() + 2, layers);
    int width = Math.max(LEAST_WIDTH, field.getWidth());
    int x = Math.max(4, Math.min(below.x, layers.getWidth() - width - 4));
    panel.setBounds(x, below.y, width, 100);
    panel.setVisible(true);
    panel.validate();
    int room = Math.min(MOST_HEIGHT, layers.getHeight() - below.y - 12);
    int rows = list.getModel().getSize() == 0 ? 0 : list.getPreferredSize().height + 8;
    int top = head.isVisible() ? head.getPreferredSize().height : 0;
    panel.setBounds(x, below.y, width, Math.max(20, Math.min(room, rows + top + 4)));
    panel.revalidate();
    panel.repaint();
  }

  /** Opaque, with a hairline round it, always drawn in the theme now in use. */
  private static final class Panel extends JPanel {
    Panel() {
      super(new BorderLayout());
      setBorder(new LineBorder(Palette.LINE.color(), 1, true));
      getAccessibleContext().setAccessibleName("What was found");
    }

    @Override
    protected void paintComponent(Graphics g) {
      g.setColor(Palette.SHEET.color());
      g.fillRect(0, 0, getWidth(), getHeight());
    }

    @Override
    public void updateUI() {
      super.updateUI();
      setBorder(new LineBorder(Palette.LINE.color(), 1, true));
    }
  }
}
