package limberboard.desktop.upkeep.due;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Listeners;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Span;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.state.DueLine;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;

/**
 * The list of what is due, what is selected and ticked in it, and the form for marking it done,
 * without Swing. Each boat keeps its own selection, ticks and half-typed form. The words of the
 * lines come with what is due; here they are only sifted. For the event thread only.
 */
public final class DueModel extends Observed {
  private static final List<Group> NOW =
      List.of(Group.OVERDUE, Group.NOT_KNOWN, Group.THIS_SEASON, Group.UNKNOWN, Group.OPTIONAL);
  private final UpkeepModel upkeep;
  private final LogModel log;
  private final Map<String, String> selected = new HashMap<>();
  private final Map<String, Set<String>> ticked = new HashMap<>();
  private final Map<String, Marking> marking = new HashMap<>();
  private final Map<Group, Integer> counts = new EnumMap<>(Group.class);
  private List<DueLine> known = List.of();
  private List<DueLine> lines = List.of();
  private int keptBack;
  private Filter filter = Filter.ALL;
  private boolean coming;
  private final Listeners afterWriting = new Listeners();

  public DueModel(UpkeepModel upkeep, LogModel log) {
    this.upkeep = upkeep;
    this.log = log;
    upkeep.onChange(this::follow);
    log.onChange(this::tell);
    follow();
  }

  /** Says what happens once something has been written from here. */
  public void afterWriting(Runnable action) {
    afterWriting.add(action);
  }

  private void follow() {
    if (known != upkeep.lines()) {
      known = upkeep.lines();
      sift();
    }
    tell();
  }

  private void sift() {
    List<DueLine> shown = known.stream().filter(line -> filter.shows(line.due())).toList();
    keptBack = known.size() - shown.size();
    counts.clear();
    shown.stream()
        .filter(line -> line.due().round().isEmpty())
        .forEach(line -> counts.merge(line.group(), 1, Integer::sum));
    List<Group> groups = new ArrayList<>(NOW);
    if (coming) {
      groups.add(Group.COMING);
    }
    lines =
        groups.stream()
            .flatMap(group -> shown.stream().filter(line -> line.group() == group))
            .toList();
  }

  /** What is listed: overdue, this season, what the log does not tell, and what comes if asked. */
  List<DueLine> lines() {
    return lines;
  }

  /** The work that is listed. */
  List<Due> rows() {
    return lines.stream().map(DueLine::due).toList();
  }

  /** How many of a group the filter lets through. */
  int count(Group group) {
    return counts.getOrDefault(group, 0);
  }

  /** How many the filter keeps back. */
  int keptBack() {
    return keptBack;
  }

  /** Whether what comes only later is listed too. */
  boolean isComingShown() {
    return coming;
  }

  public void showComing(boolean show) {
    coming = show;
    sift();
    tell();
  }

  Filter filter() {
    return filter;
  }

  void filter(Filter wanted) {
    filter = wanted;
    sift();
    tell();
  }

  /** The line that is selected, or the first of the list. */
  Optional<DueLine> selectedLine() {
    Optional<String> wanted = boat().map(Boat::id).map(selected::get);
    return lines.stream()
        .filter(line -> wanted.filter(line.id()::equals).isPresent())
        .findFirst()
        .or(() -> lines.stream().findFirst());
  }

  /** The work that is selected, or the first of the list. */
  Optional<Due> selected() {
    return selectedLine().map(DueLine::due);
  }

  /** Selects work by its id. */
  public void select(String id) {
    boat().ifPresent(boat -> selected.put(boat.id(), id));
    tell();
  }

  /** What is ticked of what is due, in its order, also where the filter keeps it back. */
  public List<Due> ticked() {
    Set<String> ids = ticks();
    return known.stream().filter(line -> ids.contains(line.id())).map(DueLine::due).toList();
  }

  public boolean isTicked(String id) {
    return ticks().contains(id);
  }

  private Set<String> ticks() {
    return boat()
        .map(boat -> ticked.computeIfAbsent(boat.id(), id -> new LinkedHashSet<>()))
        .orElse(Set.of());
  }

  /** Ticks a line, or takes its tick away; of a round with all that is done with it. */
  public void tick(String id) {
    if (boat().isPresent()) {
      Set<String> all = new LinkedHashSet<>(Set.of(id));
      known.stream()
          .filter(line -> line.id().equals(id))
          .forEach(line -> line.due().all().forEach(each -> all.add(each.id())));
      Set<String> ticks = ticks();
      if (!ticks.addAll(all)) {
        ticks.removeAll(all);
      }
    }
    tell();
  }

  /** Ticks all listed lines between two, both included. */
  void tickRange(String from, String to) {
    List<String> ids = lines.stream().map(DueLine::id).toList();
    List<String> span = Span.of(ids, from, to);
    if (!span.isEmpty()) {
      tickAll(span);
    }
  }

  /** Ticks all of these. */
  public void tickAll(List<String> ids) {
    if (boat().isPresent()) {
      ticks().addAll(ids);
    }
    tell();
  }

  /** Takes all ticks away. */
  public void untick() {
    boat().ifPresent(boat -> ticked.remove(boat.id()));
    tell();
  }

  /** Minutes of all that is ticked, without what is opened for it. */
  public double tickedMinutes() {
    return ticked().stream().mapToDouble(Due::ownerMinutes).sum();
  }

  /** The form for marking the selected or the ticked work done, while it is open. */
  public Optional<EntryForm> form() {
    Optional<Due> now = selected();
    return open()
        .filter(open -> open.dues().size() > 1 || open.isOf(now.stream().toList()))
        .map(Marking::form);
  }

  private Optional<Marking> open() {
    return boat().map(boat -> marking.get(boat.id()));
  }

  /** Boats whose half-typed forms would be lost, by id. */
  public Set<String> halfTyped() {
    Set<String> boats = new TreeSet<>();
    marking.forEach(
        (boat, open) -> {
          if (open.form().isTouched()) {
            boats.add(boat);
          }
        });
    return boats;
  }

  /** Opens the form for the selected work. */
  void mark() {
    Optional<Due> due = selected();
    if (due.isPresent() && form().isEmpty()) {
      boat().ifPresent(boat -> selected.put(boat.id(), due.get().id()));
      open(due.get().all());
    }
  }

  /** Opens one form for all that is ticked. */
  public void markTicked() {
    List<Due> dues = ticked();
    Predicate<Marking> same = open -> open.isOf(dues);
    if (!dues.isEmpty() && open().filter(same).isEmpty()) {
      dues.stream().findFirst().filter(due -> dues.size() == 1).ifPresent(d -> select(d.id()));
      open(dues);
    }
  }

  private void open(List<Due> dues) {
    Boat boat = boat().orElseThrow();
    marking.put(boat.id(), Marking.of(boat, dues, upkeep.today()));
    tell();
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
    List<LogEntry> entries = form().map(EntryForm::entries).orElse(List.of());
    if (!entries.isEmpty()) {
      String boat = boat().orElseThrow().id();
      List<String> written = open().orElseThrow().dues();
      Optional<String> next = next(written);
      log.add(
          entries,
          () -> {
            marking.remove(boat);
            ticked.getOrDefault(boat, new LinkedHashSet<>()).removeAll(written);
            next.ifPresent(id -> selected.put(boat, id));
            afterWriting.tell();
          });
    }
    tell();
  }

  /** The line after the selected one that is not written now. */
  private Optional<String> next(List<String> written) {
    List<String> ids = lines.stream().map(DueLine::id).toList();
    int at = selected().map(due -> ids.indexOf(due.id())).orElse(-1);
    return ids.stream().skip(at + 1L).filter(id -> !written.contains(id)).findFirst();
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
}
