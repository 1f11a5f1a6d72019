package limberboard.desktop.boats;

import java.awt.BorderLayout;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;

/** The boats, and a button for a new one. */
final class BoatListPanel extends JPanel {
  private final transient BoatFormModel model;
  private final CardList<Boat> list;
  private final JButton fresh;
  private boolean refreshing;

  BoatListPanel(BoatFormModel model) {
    super(new BorderLayout(0, 8));
    this.model = model;
    setOpaque(false);
    setBorder(BorderFactory.createEmptyBorder(14, 14, 10, 6));
    list = new CardList<Boat>("Boats", this::card).onChoose(boat -> model.open(boat.id()));
    list.setName("boats");
    list.addListSelectionListener(
        e -> {
          if (!refreshing && !e.getValueIsAdjusting()) {
            list.selected().ifPresent(boat -> model.open(boat.id()));
          }
        });
    fresh = Buttons.plain("New boat", "new-boat", model::newBoat);
    fresh.setMnemonic('N');
    Column head = new Column(0);
    head.add(Text.title("Boats"));
    add(head, BorderLayout.NORTH);
    add(list.scrolling(), BorderLayout.CENTER);
    add(fresh, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  JComponent region() {
    return list;
  }

  private Card card(Boat boat) {
    return Card.of(boat.name(), boat.model().title() + ", built " + boat.built());
  }

  private void refresh() {
    fresh.setText(model.notEntered().map(boat -> "Enter " + boat.name() + " …").orElse("New boat"));
    refreshing = true;
    List<Boat> boats = model.boats();
    if (!boats.equals(list.entries())) {
      list.show(boats);
    }
    list.clearSelection();
    model
        .form()
        .original()
        .flatMap(shown -> boats.stream().filter(b -> b.id().equals(shown.id())).findFirst())
        .ifPresent(boat -> list.setSelectedValue(boat, true));
    refreshing = false;
  }
}
