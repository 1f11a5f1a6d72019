package limberboard.desktop.upkeep.sheets;

import java.awt.KeyboardFocusManager;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Offer;
import limberboard.words.DayText;

/** The work of a season with boxes to tick. Up and Down go from box to box, Space ticks. */
final class OfferList extends Column {
  private final transient ShoppingModel model;
  private final transient List<JCheckBox> boxes = new ArrayList<>();
  private transient List<Offer> shown = List.of();

  OfferList(ShoppingModel model) {
    super(6);
    this.model = model;
    padded(2, 4, 8, 8);
    getAccessibleContext().setAccessibleName("Work of the season");
    Keys.within(this, "DOWN", () -> step(1));
    Keys.within(this, "UP", () -> step(-1));
    model.sheet().onChange(this::refresh);
  }

  /** What takes the focus: the first box. */
  JComponent region() {
    return boxes.isEmpty() ? this : boxes.get(0);
  }

  private void refresh() {
    if (!model.offers().equals(shown)) {
      shown = model.offers();
      removeAll();
      boxes.clear();
      shown.forEach(this::add);
      revalidate();
      repaint();
    }
    for (int i = 0; i < shown.size(); i++) {
      boxes.get(i).setSelected(model.isChosen(shown.get(i).id()));
    }
  }

  private void add(Offer offer) {
    JCheckBox box = new JCheckBox();
    box.setName("shop-" + offer.id());
    box.setOpaque(false);
    box.addActionListener(e -> model.choose(offer.id(), box.isSelected()));
    box.addFocusListener(new Seen());
    Keys.focused(box, "ENTER", box::doClick);
    Wrapped title = Text.plain(offer.title());
    Wrapped days = Text.quiet(days(offer));
    box.getAccessibleContext().setAccessibleName(offer.title() + ", " + days(offer));
    Column words = new Column(0);
    words.add(title);
    words.add(days);
    MouseAdapter click =
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            box.doClick();
          }
        };
    title.addMouseListener(click);
    days.addMouseListener(click);
    boxes.add(box);
    add(Row.growing(6, 1, box, words));
  }

  private static String days(Offer offer) {
    return offer.days().stream().map(DayText::written).collect(Collectors.joining(", "));
  }

  private void step(int by) {
    int now = boxes.indexOf(KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner());
    int next = now + by;
    if (now >= 0 && next >= 0 && next < boxes.size()) {
      boxes.get(next).requestFocusInWindow();
    }
  }

  /** Brings the box that has the focus into view. */
  private static final class Seen extends java.awt.event.FocusAdapter {
    @Override
    public void focusGained(java.awt.event.FocusEvent e) {
      JComponent row = (JComponent) e.getComponent().getParent();
      row.scrollRectToVisible(new java.awt.Rectangle(row.getSize()));
    }
  }
}
