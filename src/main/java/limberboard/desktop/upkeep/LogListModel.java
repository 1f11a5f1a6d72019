package limberboard.desktop.upkeep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.LogWords;
import limberboard.desktop.base.Days;

/**
 * A boat's log, the newest first, with a filter and a form for what happens on board besides work,
 * without Swing. Each boat keeps its own half-typed form. For the event thread only.
 */
final class LogListModel {
  /** What can be entered, in the order of a season. */
  static final List<String> EVENTS =
      List.of(
          LogWords.READING,
          LogWords.LAUNCHED,
          LogWords.MAST_UP,
          LogWords.MAST_DOWN,
          LogWords.HAULED_OUT,
          LogWords.NEW_METER);

  private static final Comparator<LogEntry> BY_DAY =
      Comparator.comparing(LogEntry::date).thenComparing(LogEntry::line).reversed();

  private final UpkeepModel upkeep;
  private final LogModel log;
  private final List<Runnable> listeners = new ArrayList<>();
  private final Map<String, EntryForm> forms = new HashMap<>();
  private String filter = "";

  /**
   * A line as it is shown.
   *
   * @param day in words
   * @param work what was done
   * @param hours the hour meter's reading, or empty
   * @param counted what was counted, or empty
   * @param note anything else
   */
  record Row(String day, String work, String hours, String counted, String note) {
    private boolean has(String word) {
      String all = String.join(" ", day, work, hours, counted, note).toLowerCase(Locale.ROOT);
      return all.contains(word);
    }
  }

  LogListModel(UpkeepModel upkeep, LogModel log) {
    this.upkeep = upkeep;
    this.log = log;
    upkeep.onChange(this::tell);
    log.onChange(this::tell);
  }

  void onChange(Runnable listener) {
    listeners.add(listener);
  }

  /** How many lines the log has. */
  int size() {
    return upkeep.boat().map(boat -> boat.log().size()).orElse(0);
  }

  /** The lines that have all words of the filter, the newest first. */
  List<Row> rows() {
    List<String> words = List.of(filter.toLowerCase(Locale.ROOT).strip().split("\\s+"));
    EntryWords entries = new EntryWords(upkeep.library());
    return upkeep.boat().map(Boat::log).orElse(List.of()).stream()
        .sorted(BY_DAY)
        .map(entry -> row(entries, entry))
        .filter(row -> words.stream().allMatch(row::has))
        .toList();
  }

  private static Row row(EntryWords words, LogEntry entry) {
    return new Row(
        Days.written(entry.date()),
        words.work(entry),
        EntryWords.hours(entry.engineHours()),
        EntryWords.counted(entry.uses()),
        entry.note());
  }

  String filter() {
    return filter;
  }

  /** Shows only lines with all of these words. */
  void filter(String words) {
    filter = words;
    tell();
  }

  /** The form for the chosen boat; empty when none is chosen. */
  Optional<EntryForm> form() {
    return upkeep.boat().map(boat -> forms.computeIfAbsent(boat.id(), id -> newForm(boat)));
  }

  private EntryForm newForm(Boat boat) {
    return new EntryForm(
        EVENTS.get(0), Optional.empty(), upkeep.today(), Counted.uses(boat, Optional.empty()));
  }

  /** Chooses what happened; what was typed stays. */
  void event(String event) {
    form()
        .filter(form -> !form.work().equals(event))
        .ifPresent(
            form -> {
              forms.put(upkeep.boat().orElseThrow().id(), form.with(event));
              tell();
            });
  }

  /** Whether the form can be written: nothing wrong in it, and a reading reads something. */
  boolean canWrite() {
    return !log.isBusy()
        && form().flatMap(EntryForm::entry).filter(LogListModel::tells).isPresent();
  }

  private static boolean tells(LogEntry entry) {
    return !entry.work().equals(LogWords.READING)
        || entry.engineHours().isPresent()
        || !entry.uses().isEmpty()
        || !entry.note().isEmpty();
  }

  /** Writes what the form says; without effect while something in it is wrong. */
  void write() {
    if (canWrite()) {
      String boat = upkeep.boat().orElseThrow().id();
      log.add(form().flatMap(EntryForm::entry).orElseThrow(), () -> forms.remove(boat));
    }
    tell();
  }

  /** Empties the form. */
  void clear() {
    upkeep.boat().ifPresent(boat -> forms.remove(boat.id()));
    tell();
  }

  /** The place's own model. */
  UpkeepModel upkeep() {
    return upkeep;
  }

  private void tell() {
    List.copyOf(listeners).forEach(Runnable::run);
  }
}
