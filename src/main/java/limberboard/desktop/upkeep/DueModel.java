package limberboard.desktop.upkeep;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWords;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;

/**
 * The list of what is due, what is selected in it, and the form for marking it done, without Swing.
 * Each boat keeps its own selection and its own half-typed form. For the event thread only.
 */
final class DueModel {
  private static final List<Group> NOW = List.of(Group.OVERDUE, Group.THIS_SEASON, Group.UNKNOWN);
  private final UpkeepModel upkeep;
  private final LogModel log;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<String, String> selected = new HashMap<>();
  private final Map<String, Marking> marking = new HashMap<>();
  private Filter filter = Filter.ALL;
  private boolean coming;

  private record Marking(String due, EntryForm form) {}

  DueModel(UpkeepModel upkeep, LogModel log) {
    this.upkeep = upkeep;
    this.log = log;
    upkeep.onChange(this::tell);
    log.onChange(this::tell);
  }

  void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** What is listed: overdue, this season, what the log does not tell, and what comes if asked. */
  List<Due> rows() {
    List<Due> rows = new ArrayList<>();
    upkeep
        .upkeep()
        .ifPresent(
            known -> {
              NOW.forEach(group -> rows.addAll(of(known, group)));
              if (coming) {
                rows.addAll(of(known, Group.COMING));
              }
            });
    return List.copyOf(rows);
  }

  private List<Due> of(Upkeep known, Group group) {
    return known.of(group).stream().filter(filter::shows).toList();
  }

  /** How many of a group the filter lets through. */
  int count(Group group) {
    return upkeep.upkeep().map(known -> of(known, group).size()).orElse(0);
  }

  /** How many the filter keeps back. */
  int keptBack() {
    return upkeep
        .upkeep()
        .map(known -> (int) known.all().stream().filter(due -> !filter.shows(due)).count())
        .orElse(0);
  }

  /** Whether what comes only later is listed too. */
  boolean isComingShown() {
    return coming;
  }

  void showComing(boolean show) {
    coming = show;
    tell();
  }

  Filter filter() {
    return filter;
  }

  void filter(Filter wanted) {
    filter = wanted;
    tell();
  }

  /** The work that is selected, or the first of the list. */
  Optional<Due> selected() {
    List<Due> rows = rows();
    Optional<String> wanted = boat().map(Boat::id).map(selected::get);
    return rows.stream()
        .filter(due -> wanted.filter(due.id()::equals).isPresent())
        .findFirst()
        .or(() -> rows.stream().findFirst());
  }

  /** Selects work by its id. */
  void select(String id) {
    boat().ifPresent(boat -> selected.put(boat.id(), id));
    tell();
  }

  /** The form for marking the selected work done, while it is open. */
  Optional<EntryForm> form() {
    Optional<String> now = selected().map(Due::id);
    return boat()
        .map(boat -> marking.get(boat.id()))
        .filter(open -> now.filter(open.due()::equals).isPresent())
        .map(Marking::form);
  }

  /** Opens the form for the selected work. */
  void mark() {
    Optional<Due> due = selected();
    if (due.isPresent() && boat().isPresent() && form().isEmpty()) {
      Boat boat = boat().get();
      selected.put(boat.id(), due.get().id());
      marking.put(boat.id(), new Marking(due.get().id(), newForm(boat, due.get())));
      tell();
    }
  }

  private EntryForm newForm(Boat boat, Due due) {
    Optional<String> of = due.after().map(page -> page.id());
    return new EntryForm(
        of.isPresent() ? LogWords.LOOKED_AGAIN : due.work().id(),
        of,
        upkeep.today(),
        Counted.uses(boat, due.work().details().interval()));
  }

  /** Closes the form without writing anything. */
  void leave() {
    boat().ifPresent(boat -> marking.remove(boat.id()));
    tell();
  }

  /**
   * Writes what the form says, and selects the next piece of work; without effect while something
   * in the form is wrong.
   */
  void write() {
    Optional<LogEntry> entry = form().flatMap(EntryForm::entry);
    if (entry.isPresent()) {
      String boat = boat().orElseThrow().id();
      Optional<String> next = next();
      log.add(
          entry.get(),
          () -> {
            marking.remove(boat);
            next.ifPresent(id -> selected.put(boat, id));
          });
    }
    tell();
  }

  private Optional<String> next() {
    List<String> ids = rows().stream().map(Due::id).toList();
    int at = selected().map(due -> ids.indexOf(due.id())).orElse(-1);
    return at >= 0 && at + 1 < ids.size() ? Optional.of(ids.get(at + 1)) : Optional.empty();
  }

  /** Whether something is being written. */
  boolean isBusy() {
    return log.isBusy();
  }

  /** The chosen boat. */
  Optional<Boat> boat() {
    return upkeep.boat();
  }

  /** The place's own model. */
  UpkeepModel upkeep() {
    return upkeep;
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
