package limberboard.desktop.boats;

import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.Boat;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Card;
import limberboard.desktop.parts.CardList;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.Wrapped;

/** Which boat is it about? Shown until one is chosen, and while the library is being read. */
public final class WhichBoatPanel extends JPanel {
  private final transient Session session;
  private final String purpose;
  private final String choice;
  private final Wrapped title = Text.title("");
  private final Wrapped words = Text.reading("");
  private final CardList<Boat> boats;
  private final JButton enter;

  /**
   * The question in one place of the window.
   *
   * @param session tells which boats there are, and is told which is chosen
   * @param name the list's name, for tests
   * @param purpose what a boat that is entered is good for, in words
   * @param choice why one is to be chosen, in words
   * @param newBoat goes where a boat is entered
   */
  public WhichBoatPanel(
      Session session, String name, String purpose, String choice, Runnable newBoat) {
    super(new BorderLayout(0, 10));
    this.session = session;
    this.purpose = purpose;
    this.choice = choice;
    setBorder(BorderFactory.createEmptyBorder(20, 26, 20, 26));
    boats =
        new CardList<Boat>("Boats", boat -> Card.of(boat.name(), boat.particulars()))
            .framed()
            .onChoose(boat -> session.choose(Optional.of(boat.id())));
    boats.setName(name);
    enter = Buttons.plain("Enter a new boat", newBoat);
    Column head = new Column(6);
    head.add(title);
    head.add(words);
    Column foot = new Column(0);
    foot.add(Row.wrapping(10, enter));
    add(head, BorderLayout.NORTH);
    add(boats.scrolling(), BorderLayout.CENTER);
    add(foot, BorderLayout.SOUTH);
    session.onChange(this::refresh);
    refresh();
  }

  /** Where F6 goes. */
  public List<JComponent> regions() {
    return List.of(boats, enter);
  }

  private void refresh() {
    List<Boat> known = session.workspace().boats();
    boats.show(known);
    enter.setVisible(session.isRead());
    title.setText(session.isRead() ? "Which boat is it?" : "Reading the library …");
    words.setText(
        !session.isRead()
            ? "This takes a moment when it is read for the first time."
            : known.isEmpty()
                ? "No boat has been entered yet. Enter one: " + purpose
                : choice + " Choose it here, or at the top at any time.");
  }
}
