package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.StackedList;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.sheets.RiggingModel.RopeLine;
import limberboard.desktop.upkeep.state.TickedWork;

/** The ropes of the boat to be ticked, how long the ticked ones are, and the way to the shop. */
final class RopeTicks {
  private final RiggingModel model;
  private final CardList<RopeLine> list = new CardList<>("Ropes", this::card);
  private final Wrapped gone = Text.plain("");
  private final Wrapped words = Text.plain("");
  private final JButton all;
  private final JButton none;
  private final JButton shop;
  private final StackedList panel;

  /**
   * Ticks.
   *
   * @param openPage opens a page
   */
  RopeTicks(RiggingModel model, TickedWork wanted, Consumer<String> openPage) {
    this.model = model;
    all = Buttons.plain("Tick all", "rigging-tick-all", model::tickAll);
    all.getAccessibleContext().setAccessibleName("Tick all ropes");
    none = Buttons.plain("Clear ticks", "rigging-clear", model::clear);
    shop = Buttons.main("Shop for them", "rigging-shop", () -> wanted.shopRopes(model.asked()));
    shop.setMnemonic('F');
    shop.setToolTipText("Puts the ticked ropes onto the shopping list, beside the work");
    list.setName("rigging-ropes");
    list.framed()
        .onTick((rope, range) -> model.tick(rope.id(), range))
        .onChoose(rope -> rope.page().ifPresent(openPage));
    gone.setName("rigging-gone");
    words.setName("rigging-ticked");
    Column head = new Column(6).padded(4, 8, 0, 6);
    head.add(Text.heading("Ropes to renew"));
    head.add(
        Text.quiet("Space ticks, Shift+Space up to here, Enter opens the page of the material."));
    head.add(gone);
    head.add(Row.wrapping(8, all, none));
    Column foot = new Column(6).padded(6, 8, 2, 6);
    foot.add(words);
    foot.add(Row.wrapping(8, shop));
    panel = new StackedList(head, list, foot);
    model.onChange(this::refresh);
    refresh();
  }

  JComponent component() {
    return panel;
  }

  JComponent region() {
    return list;
  }

  private Card card(RopeLine rope) {
    Card card = Card.of(rope.title(), "").noting(rope.facts()).ticked(model.isTicked(rope.id()));
    return rope.group().isEmpty() ? card : card.under(rope.group());
  }

  private void refresh() {
    if (!list.entries().equals(model.ropes())) {
      list.show(model.ropes());
    }
    int ticked = model.ticked().size();
    all.setEnabled(ticked < model.ropes().size());
    none.setEnabled(ticked > 0 || !model.gone().isEmpty());
    shop.setEnabled(ticked > 0);
    words.setText(model.words());
    shop.getAccessibleContext().setAccessibleDescription(model.words());
    gone.setText(gone(model.gone()));
    gone.setVisible(!model.gone().isEmpty());
    list.repaint();
    panel.revalidate();
  }

  /** Says that ropes are not on the boat's list any more; empty when all are. */
  static String gone(List<String> titles) {
    return titles.isEmpty()
        ? ""
        : "Not on her list of ropes any more, and left out: " + String.join(", ", titles) + ".";
  }
}
