package limberboard.desktop.upkeep;

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
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;
import limberboard.desktop.upkeep.state.UpkeepModel;

/** Asks which boat is meant, or for one to be entered. */
final class NoBoatPanel extends JPanel {
  private final transient UpkeepModel model;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.reading("");
  private final CardList<Boat> boats;
  private final JButton enter;

  NoBoatPanel(UpkeepModel model, Runnable newBoat) {
    super(new BorderLayout(0, 10));
    this.model = model;
    setBorder(BorderFactory.createEmptyBorder(20, 26, 20, 26));
    boats =
        new CardList<Boat>("Boats", NoBoatPanel::card)
            .framed()
            .onChoose(boat -> model.choose(boat.id()));
    boats.setName("upkeep-boats");
    enter = Buttons.plain("Enter a new boat", newBoat);
    Column head = new Column(6);
    head.add(title);
    head.add(words);
    Column foot = new Column(0);
    foot.add(Row.wrapping(10, enter));
    add(head, BorderLayout.NORTH);
    add(boats.scrolling(), BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
    model.onChange(this::refresh);
    refresh();
  }

  List<JComponent> regions() {
    return List.of(boats, enter);
  }

  private static Card card(Boat boat) {
    return Card.of(boat.name(), boat.particulars());
  }

  private void refresh() {
    boolean reading = model.state() == UpkeepModel.State.READING;
    boats.show(model.boats());
    enter.setVisible(!reading);
    title.setText(reading ? "Reading the library …" : "Which boat is it?");
    words.setText(
        reading
            ? "This takes a moment when it is read for the first time."
            : model.boats().isEmpty()
                ? "No boat has been entered yet. Enter one: what is due follows from its model,"
                    + " year, what is fitted, and its log."
                : "What is due is worked out for one boat. Choose it here, or at the top at any"
                    + " time.");
  }
}
