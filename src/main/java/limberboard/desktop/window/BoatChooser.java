package limberboard.desktop.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import limberboard.boat.Boat;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.ListClosing;

/**
 * Which boat everything is about. While the list is open, moving through it chooses nothing; Enter
 * or a click does.
 */
final class BoatChooser extends JComboBox<BoatChooser.Entry> {
  private final transient Session session;
  private final transient Runnable notEntered;
  private Optional<String> unsaved = Optional.empty();
  private boolean refreshing;

  /** What an entry of the list does. */
  sealed interface Entry {
    /** What a person reads. */
    String words();
  }

  /**
   * A boat, or none.
   *
   * @param id the boat's id; empty for no boat
   * @param words what a person reads
   */
  record BoatEntry(Optional<String> id, String words) implements Entry {
    @Override
    public String toString() {
      return words;
    }
  }

  /** A boat that is to be named by model and year. */
  record OtherEntry() implements Entry {
    @Override
    public String words() {
      return "A boat not entered …";
    }

    @Override
    public String toString() {
      return words();
    }
  }

  /**
   * A chooser.
   *
   * @param session boats, and which is chosen
   * @param notEntered asks for a boat that nobody has entered
   */
  BoatChooser(Session session, Runnable notEntered) {
    this.session = session;
    this.notEntered = notEntered;
    getAccessibleContext().setAccessibleName("Which boat");
    setToolTipText("Which boat everything here is about");
    setName("boat-chooser");
    setMaximumRowCount(20);
    session.onChange(this::refresh);
    ListClosing.of(this, this::chosen, this::refresh);
    refresh();
  }

  /** Marks the boat of this id, if any, as one whose form has changes that are not saved. */
  void unsaved(Optional<String> id) {
    if (!id.equals(unsaved)) {
      unsaved = id;
      refresh();
    }
  }

  private void chosen() {
    if (refreshing) {
      return;
    }
    if (getSelectedItem() instanceof BoatEntry entry) {
      session.choose(entry.id());
    } else {
      refresh();
      notEntered.run();
    }
  }

  private void refresh() {
    refreshing = true;
    List<Entry> entries = new ArrayList<>();
    entries.add(new BoatEntry(Optional.empty(), none()));
    session.workspace().boats().forEach(boat -> entries.add(entry(boat)));
    session.boat().filter(boat -> !boat.isEntered()).ifPresent(boat -> entries.add(entry(boat)));
    if (session.isRead()) {
      entries.add(new OtherEntry());
    }
    setModel(new DefaultComboBoxModel<>(entries.toArray(Entry[]::new)));
    session.boat().map(this::entry).ifPresent(this::setSelectedItem);
    refreshing = false;
  }

  private String none() {
    return session.isRead() && session.workspace().boats().isEmpty()
        ? "No boats yet"
        : "No boat chosen";
  }

  private Entry entry(Boat boat) {
    String words =
        boat.isEntered()
            ? boat.name() + ", " + boat.model().title() + ", " + boat.built()
            : boat.name() + ", not entered";
    Optional<String> id = Optional.of(boat.id());
    return new BoatEntry(id, unsaved.equals(id) ? "Unsaved: " + words : words);
  }
}
