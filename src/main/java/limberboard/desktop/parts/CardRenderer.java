package limberboard.desktop.parts;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.function.Function;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JViewport;
import javax.swing.ListCellRenderer;
import limberboard.desktop.look.Palette;

/** Draws cards, each as high as its text needs at the list's width. */
final class CardRenderer<T> extends Column implements ListCellRenderer<T> {
  private static final int ARC = 10;
  private final transient Function<? super T, Card> cards;
  private final Wrapped heading = Text.caption("");
  private final Column body = new Column(2);
  private final Wrapped title = Text.strong("");
  private final JCheckBox box = new JCheckBox();
  private final JLabel kind = new JLabel();
  private final Wrapped detail = Text.plain("");
  private final Wrapped note = Text.quiet("");
  private boolean selected;
  private boolean focused;
  private boolean framed;

  CardRenderer(Function<? super T, Card> cards) {
    super(4);
    this.cards = cards;
    padded(2, 4, 2, 4);
    heading.setBorder(BorderFactory.createEmptyBorder(10, 8, 2, 8));
    body.padded(7, 10, 8, 10);
    add(heading);
    add(body);
    box.setOpaque(false);
    body.add(Row.growing(10, 1, box, title, kind));
    body.add(detail);
    body.add(note);
  }

  void frame() {
    framed = true;
  }

  @Override
  public Component getListCellRendererComponent(
      JList<? extends T> list, T value, int index, boolean isSelected, boolean hasFocus) {
    Card card = cards.apply(value);
    selected = isSelected;
    boolean first = index == 0 && list.isSelectionEmpty();
    focused = (isSelected || first) && list.isFocusOwner();
    fill(heading, card.heading());
    fill(title, card.title());
    box.setVisible(card.tick() != Card.Tick.NONE);
    box.setSelected(card.tick() == Card.Tick.ON);
    kind.setText(card.kind());
    kind.setForeground(Palette.QUIET.color());
    kind.setVisible(!card.kind().isEmpty());
    fill(detail, card.detail());
    fill(note, card.note());
    detail.getHighlighter().removeAllHighlights();
    card.marks().forEach(mark -> detail.mark(mark.start(), mark.end()));
    title.setForeground((card.muted() ? Palette.QUIET : Palette.INK).color());
    detail.setForeground((card.muted() ? Palette.QUIET : Palette.INK).color());
    setToolTipText(null);
    getAccessibleContext().setAccessibleName(card.spoken());
    setSize(widthOf(list), Math.max(1, getHeight()));
    return this;
  }

  private static void fill(Wrapped text, String words) {
    text.setText(words);
    text.setVisible(!words.isEmpty());
  }

  private static int widthOf(JList<?> list) {
    Container parent = list.getParent();
    int width = parent instanceof JViewport view ? view.getWidth() : list.getWidth();
    return Math.max(120, width - list.getInsets().left - list.getInsets().right);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleItem();
    }
    return accessibleContext;
  }

  /** An entry for those who listen: one item, which says everything that is on its card. */
  private final class AccessibleItem extends AccessibleJPanel {
    @Override
    public AccessibleRole getAccessibleRole() {
      return AccessibleRole.LIST_ITEM;
    }

    @Override
    public int getAccessibleChildrenCount() {
      return 0;
    }
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(getWidth(), super.getPreferredSize().height);
  }

  @Override
  protected void paintComponent(Graphics g) {
    super.paintComponent(g);
    Graphics2D g2 = (Graphics2D) g.create();
    g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    if (selected) {
      fill(g2, Palette.CHOSEN);
    } else if (framed) {
      fill(g2, Palette.SHEET);
    }
    if (focused) {
      g2.setStroke(new BasicStroke(2));
      edge(g2, Palette.ACCENT);
    } else if (framed) {
      edge(g2, Palette.LINE);
    }
    g2.dispose();
  }

  private void fill(Graphics2D g, Palette colour) {
    g.setColor(colour.color());
    g.fillRoundRect(body.getX(), body.getY(), body.getWidth(), body.getHeight(), ARC, ARC);
  }

  private void edge(Graphics2D g, Palette colour) {
    g.setColor(colour.color());
    g.drawRoundRect(
        body.getX() + 1, body.getY() + 1, body.getWidth() - 2, body.getHeight() - 2, ARC, ARC);
  }
}
