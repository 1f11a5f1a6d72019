package limberboard.desktop.letters;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractListModel;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.look.Palette;

/**
 * The letters, one below the other, three lines each: who and how far, what about, when. All are
 * equally high, so that ten thousand of them are no slower than ten.
 */
final class InboxList extends JList<InboxRow> {
  private static final int SIGN = 16;
  private final transient Rows rows = new Rows();
  private final transient Consumer<String> chosen;
  private boolean showing;

  /** An empty list that tells which letter is chosen. */
  InboxList(Consumer<String> chosen) {
    this.chosen = chosen;
    setName("inbox");
    setModel(rows);
    setOpaque(false);
    setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    getAccessibleContext().setAccessibleName("Letters");
    setCellRenderer(new Renderer());
    measure();
    addListSelectionListener(
        e -> {
          if (!showing && !e.getValueIsAdjusting() && getSelectedValue() != null) {
            this.chosen.accept(getSelectedValue().name());
          }
        });
  }

  private static final class Rows extends AbstractListModel<InboxRow> {
    private transient List<InboxRow> all = List.of();

    @Override
    public int getSize() {
      return all.size();
    }

    @Override
    public InboxRow getElementAt(int index) {
      return all.get(index);
    }

    void show(List<InboxRow> other) {
      int before = all.size();
      all = List.copyOf(other);
      if (before > all.size()) {
        fireIntervalRemoved(this, all.size(), before - 1);
      } else if (before < all.size()) {
        fireIntervalAdded(this, before, all.size() - 1);
      }
      if (!all.isEmpty()) {
        fireContentsChanged(this, 0, all.size() - 1);
      }
    }
  }

  /** Shows these letters; the open one is selected. */
  void show(List<InboxRow> letters, String open) {
    showing = true;
    try {
      rows.show(letters);
      int at = -1;
      for (int i = 0; i < letters.size() && at < 0; i++) {
        at = letters.get(i).name().equals(open) ? i : -1;
      }
      if (at != getSelectedIndex()) {
        if (at < 0) {
          clearSelection();
        } else {
          setSelectedIndex(at);
          ensureIndexIsVisible(at);
        }
      }
    } finally {
      showing = false;
    }
  }

  /** All rows are as high as any of them. */
  private void measure() {
    if (getCellRenderer() instanceof Renderer renderer) {
      renderer.fill("X", "X", "X", "X", false);
      setFixedCellWidth(1);
      setFixedCellHeight(renderer.getPreferredSize().height);
    }
  }

  @Override
  public void updateUI() {
    super.updateUI();
    setDropTarget(null); // files that are dropped go to what it lies in
    if (getCellRenderer() instanceof Renderer renderer) {
      javax.swing.SwingUtilities.updateComponentTreeUI(renderer);
      measure();
    }
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public int getNextMatch(String prefix, int start, javax.swing.text.Position.Bias bias) {
    String wanted = prefix.toLowerCase(java.util.Locale.ROOT);
    for (int i = 0; i < rows.getSize(); i++) {
      int at = (start + i) % rows.getSize();
      if (rows.getElementAt(at).who().toLowerCase(java.util.Locale.ROOT).startsWith(wanted)) {
        return at;
      }
    }
    return -1;
  }

  /** Draws a row. */
  private static final class Renderer extends JPanel implements ListCellRenderer<InboxRow> {
    private static final int ARC = 10;
    private final JLabel who = new JLabel();
    private final JLabel side = new JLabel();
    private final JLabel about = new JLabel();
    private final JLabel line = new JLabel();
    private boolean chosen;
    private boolean focused;

    Renderer() {
      super(new BorderLayout(0, 1));
      setOpaque(false);
      setBorder(BorderFactory.createEmptyBorder(6, 12, 7, 12));
      who.putClientProperty("FlatLaf.styleClass", "h4");
      JPanel first = new JPanel(new BorderLayout(8, 0));
      first.setOpaque(false);
      first.add(who, BorderLayout.CENTER);
      first.add(side, BorderLayout.EAST);
      JPanel below = new JPanel(new BorderLayout(0, 1));
      below.setOpaque(false);
      below.add(about, BorderLayout.NORTH);
      below.add(line, BorderLayout.SOUTH);
      add(first, BorderLayout.NORTH);
      add(below, BorderLayout.CENTER);
    }

    void fill(String name, String state, String what, String last, boolean urgent) {
      who.setText(name);
      side.setText(state);
      about.setText(what);
      line.setText(last);
      side.setForeground(Palette.QUIET.color());
      line.setForeground(Palette.QUIET.color());
      about.setForeground((urgent ? Palette.CAUTION_INK : Palette.INK).color());
      about.setIcon(urgent ? LineIcon.caution(SIGN) : null);
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends InboxRow> list, InboxRow row, int index, boolean selected, boolean focus) {
      String urgent =
          row.isUrgent() ? "Urgent: " + row.summary().orElseThrow().urgent() + ". " : "";
      fill(row.who(), row.stateWord(), urgent + row.about(), row.line(), row.isUrgent());
      chosen = selected;
      focused = selected && list.isFocusOwner();
      getAccessibleContext().setAccessibleName(row.spoken());
      setToolTipText(urgent + row.about());
      return this;
    }

    @Override
    protected void paintComponent(Graphics g) {
      Graphics2D g2 = (Graphics2D) g.create();
      g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      int arc = UIScale.scale(ARC);
      Color ground = (chosen ? Palette.CHOSEN : Palette.SHEET).color();
      g2.setColor(ground);
      g2.fillRoundRect(2, 1, getWidth() - 4, getHeight() - 3, arc, arc);
      g2.setColor((focused ? Palette.ACCENT : Palette.LINE).color());
      g2.drawRoundRect(2, 1, getWidth() - 5, getHeight() - 4, arc, arc);
      g2.dispose();
      super.paintComponent(g);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
      if (accessibleContext == null) {
        accessibleContext = new AccessibleRow();
      }
      return accessibleContext;
    }

    /** An entry for those who listen: one item, which says everything that is in its row. */
    private final class AccessibleRow extends AccessibleJPanel {

      @Override
      public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST_ITEM;
      }

      @Override
      public int getAccessibleChildrenCount() {
        return 0;
      }
    }
  }
}
