package limberboard.desktop.trace;

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

/** Which boat is it about? Shown until one is chosen, and while the library is being read. */
final class WhichBoatPanel extends JPanel {
  private final transient TraceModel model;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.reading("");
  private final CardList<Boat> boats;
  private final JButton enter;

  WhichBoatPanel(TraceModel model, Runnable newBoat) {
    super(new BorderLayout(0, 10));
    this.model = model;
    setBorder(BorderFactory.createEmptyBorder(20, 26, 20, 26));
    boats =
        new CardList<Boat>("Boats", WhichBoatPanel::card)
            .framed()
            .onChoose(boat -> model.chooseBoat(boat.id()));
    boats.setName("which-boat");
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
    boolean reading = model.stage() == Stage.READING;
    boats.show(model.boats());
    enter.setVisible(!reading);
    title.setText(reading ? "Reading the library …" : "Which boat is it?");
    words.setText(words(reading));
  }

  private String words(boolean reading) {
    if (reading) {
      return "This takes a moment when it is read for the first time.";
    }
    if (model.boats().isEmpty()) {
      return "No boat has been entered yet. Enter one: its model, year and what is fitted decide"
          + " which causes, checks and mends are right for it.";
    }
    return "Causes, checks and mends are cut to one boat. Choose it here, or at the top at any"
        + " time.";
  }
}
