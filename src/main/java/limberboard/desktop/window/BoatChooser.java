package limberboard.desktop.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import limberboard.boat.Boat;
import limberboard.desktop.base.Session;

/** Which boat everything is about. */
final class BoatChooser extends JComboBox<BoatChooser.Entry> {
  private final transient Session session;
  private boolean refreshing;

  /**
   * An entry of the list.
   *
   * @param id the boat's id; empty for no boat
   * @param words what a person reads
   */
  record Entry(Optional<String> id, String words) {
    @Override
    public String toString() {
      return words;
    }
  }

  BoatChooser(Session session) {
    this.session = session;
    getAccessibleContext().setAccessibleName("Which boat");
    setToolTipText("Which boat everything here is about");
    setName("boat-chooser");
    setMaximumRowCount(20);
    session.onChange(this::refresh);
    addActionListener(e -> chosen());
    refresh();
  }

  private void chosen() {
    if (!refreshing && getSelectedItem() instanceof Entry entry) {
      session.choose(entry.id());
    }
  }

  private void refresh() {
    refreshing = true;
    List<Entry> entries = new ArrayList<>();
    entries.add(new Entry(Optional.empty(), none()));
    session.workspace().boats().forEach(boat -> entries.add(entry(boat)));
    setModel(new DefaultComboBoxModel<>(entries.toArray(Entry[]::new)));
    session.boat().map(BoatChooser::entry).ifPresent(this::setSelectedItem);
    refreshing = false;
  }

  private String none() {
    return session.isRead() && session.workspace().boats().isEmpty()
        ? "No boats yet"
        : "No boat chosen";
  }

  private static Entry entry(Boat boat) {
    return new Entry(
        Optional.of(boat.id()), boat.name() + ", " + boat.model().title() + ", " + boat.built());
  }
}
