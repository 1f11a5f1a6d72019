package limberboard.desktop.upkeep.sheets;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.sheets.ShoppingModel.Offer;
import limberboard.desktop.upkeep.sheets.ShoppingModel.RopeOffer;
import limberboard.words.DayText;

/**
 * The ropes that were asked for and the work of a season, with boxes to tick. Up and Down go from
 * box to box, Space ticks.
 */
final class OfferList extends Column {
  private final transient ShoppingModel model;
  private final transient List<Line> lines = new ArrayList<>();
  private transient List<Offer> works = List.of();
  private transient List<RopeOffer> ropes = List.of();

  OfferList(ShoppingModel model) {
    super(6);
    this.model = model;
    padded(2, 4, 8, 8);
    getAccessibleContext().setAccessibleName("Work of the season, and ropes");
    model.sheet().onChange(this::refresh);
  }

  /** A box, and whether it is to be ticked. */
  private record Line(JCheckBox box, BooleanSupplier chosen) {}

  /** What takes the focus: the first box. */
  JComponent region() {
    return lines.isEmpty() ? this : lines.get(0).box();
  }

  private void refresh() {
    if (!model.offers().equals(works) || !model.ropes().equals(ropes)) {
      boolean within = lines.stream().anyMatch(line -> line.box().isFocusOwner());
      works = model.offers();
      ropes = model.ropes();
      fill();
      if (within) {
        Later.focus(region());
      }
    }
    lines.forEach(line -> line.box().setSelected(line.chosen().getAsBoolean()));
  }

  private void fill() {
    removeAll();
    lines.clear();
    if (!ropes.isEmpty()) {
      add(Text.caption("Ropes"));
      ropes.forEach(this::add);
    }
    if (!ropes.isEmpty() && !works.isEmpty()) {
      add(Text.caption("Work, by day"));
    }
    works.forEach(this::add);
    revalidate();
    repaint();
  }

  private void add(RopeOffer rope) {
    add(
        "shop-rope-" + rope.id(),
        rope.title(),
        rope.facts(),
        () -> model.isRopeChosen(rope.id()),
        wanted -> model.chooseRope(rope.id(), wanted));
  }

  private void add(Offer work) {
    String days = work.days().stream().map(DayText::written).collect(Collectors.joining(", "));
    add(
        "shop-" + work.id(),
        work.title(),
        days,
        () -> model.isChosen(work.id()),
        wanted -> model.choose(work.id(), wanted));
  }

  private void add(
      String name, String title, String facts, BooleanSupplier chosen, Consumer<Boolean> choose) {
    JCheckBox box = new JCheckBox();
    box.setName(name);
    box.setOpaque(false);
    box.addActionListener(e -> choose.accept(box.isSelected()));
    box.addFocusListener(new Seen());
    Keys.focused(box, "ENTER", box::doClick);
    int at = lines.size();
    Keys.focused(box, "DOWN", () -> go(at + 1));
    Keys.focused(box, "UP", () -> go(at - 1));
    box.getAccessibleContext().setAccessibleName(title + ", " + facts);
    Column words = new Column(0);
    MouseAdapter click =
        new MouseAdapter() {
          @Override
          public void mouseClicked(MouseEvent e) {
            box.doClick();
          }
        };
    for (Wrapped part : List.of(Text.plain(title), Text.quiet(facts))) {
      part.addMouseListener(click);
      words.add(part);
    }
    lines.add(new Line(box, chosen));
    add(Row.growing(6, 1, box, words));
  }

  private void go(int to) {
    if (to >= 0 && to < lines.size()) {
      lines.get(to).box().requestFocusInWindow();
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
