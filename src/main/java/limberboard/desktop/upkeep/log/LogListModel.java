package limberboard.desktop.upkeep.log;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Observed;
import limberboard.desktop.upkeep.entry.Counted;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.entry.EntryWords;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.desktop.upkeep.state.UpkeepModel.Work;
import limberboard.library.value.LogEvents;

/**
 * A boat's log, the newest first, with a filter and a form that adds a line or corrects one,
 * without Swing. Each boat keeps its own half-typed form. For the event thread only.
 */
public final class LogListModel extends Observed {
  /** What can be entered: work first, then events in the order of a season. */
  static final List<String> KINDS =
      List.of(
          LogDraft.WORK,
          LogEvents.READING,
          LogEvents.LAUNCHED,
          LogEvents.MAST_UP,
          LogEvents.MAST_DOWN,
          LogEvents.HAULED_OUT,
          LogEvents.NEW_METER,
          LogEvents.LOOKED_AGAIN);

  private final UpkeepModel upkeep;
  private final LogModel log;
  private final Map<String, LogDraft> drafts = new HashMap<>();
  private Consumer<Boolean> afterWriting = corrected -> {};
  private List<LogEntry> read = List.of();
  private List<Line> all = List.of();
  private List<Line> lines = List.of();
  private String filter = "";

  /** A line and the entry that it shows. */
  record Line(LogRow row, LogEntry entry) {}

  public LogListModel(UpkeepModel upkeep, LogModel log) {
    this.upkeep = upkeep;
    this.log = log;
    upkeep.onChange(this::follow);
    log.onChange(this::tell);
    follow();
  }

  /** Says what happens once a line has been written; true when it was corrected. */
  void afterWriting(Consumer<Boolean> action) {
    afterWriting = action;
  }

  private void follow() {
    List<LogEntry> now = upkeep.boat().map(Boat::log).orElse(List.of());
    if (now != read) {
      read = now;
      EntryWords words = new EntryWords(upkeep.library());
      all =
          now.stream()
              .sorted(LogRow.NEWEST_FIRST)
              .map(entry -> new Line(LogRow.of(words, entry), entry))
              .toList();
      sift();
    }
    tell();
  }

  private void sift() {
    List<String> words = List.of(filter.toLowerCase(Locale.ROOT).strip().split("\\s+"));
    lines = all.stream().filter(line -> words.stream().allMatch(line.row()::has)).toList();
  }

  /** How many lines the log has. */
  int size() {
    return all.size();
  }

  /** The lines that have all words of the filter, the newest first. */
  List<Line> lines() {
    return lines;
  }

  /** The same in words. */
  public List<LogRow> rows() {
    return lines.stream().map(Line::row).toList();
  }

  /** Shows only lines with all of these words. */
  public void filter(String words) {
    filter = words;
    sift();
    tell();
  }

  /** What is typed for the chosen boat; empty when none is chosen. */
  Optional<LogDraft> draft() {
    return upkeep.boat().map(boat -> drafts.computeIfAbsent(boat.id(), id -> newDraft(boat)));
  }

  /** The form for the chosen boat; empty when none is chosen. */
  Optional<EntryForm> form() {
    return draft().map(LogDraft::form);
  }

  private LogDraft newDraft(Boat boat) {
    return LogDraft.empty(LogEvents.READING, upkeep.today(), Counted.uses(boat, Optional.empty()));
  }

  /** Chooses what happened; what was typed stays. */
  public void event(String kind) {
    draft().filter(now -> !now.kind().equals(kind)).ifPresent(now -> put(now.kind(kind)));
  }

  /** Looks for work by words of its title. */
  void typeWork(String words) {
    draft()
        .filter(now -> !now.typed().equals(words))
        .ifPresent(now -> put(now.typed(words, upkeep.works())));
  }

  /** Work that has all the words typed. */
  List<Work> matches() {
    return draft().map(now -> now.matches(upkeep.works())).orElse(List.of());
  }

  /** Chooses the work that was done. */
  public void chooseWork(Work work) {
    draft().ifPresent(now -> put(now.work(work)));
  }

  /** What is missing about the work, or empty. */
  String workProblem() {
    Optional<LogDraft> open = draft().filter(now -> now.needsWork() && now.work().isEmpty());
    if (open.isEmpty()) {
      return "";
    }
    return open.get().typed().isBlank()
        ? "Type some words of its title."
        : matches().isEmpty()
            ? "No work that fits her has these words in its title."
            : "Choose it:";
  }

  private void put(LogDraft draft) {
    drafts.put(upkeep.boat().orElseThrow().id(), draft);
    tell();
  }

  /** Fills the form with a line, to correct it. */
  void correct(LogEntry entry) {
    upkeep
        .boat()
        .ifPresent(
            boat -> {
              String title =
                  new EntryWords(upkeep.library()).title(entry.of().orElse(entry.work()));
              List<String> uses = Counted.uses(boat, Optional.empty());
              put(LogDraft.of(entry, title, upkeep.today(), uses));
            });
  }

  /** Whether a line is being corrected. */
  boolean isCorrecting() {
    return draft().flatMap(LogDraft::original).isPresent();
  }

  /** Takes a line out of the log; it can be undone. */
  void delete(LogEntry entry) {
    log.remove(entry);
  }

  /** Whether the form can be written: nothing wrong in it, and a reading reads something. */
  boolean canWrite() {
    return draft().flatMap(LogDraft::entry).isPresent();
  }

  /** Writes what the form says; without effect while something in it is wrong. */
  void write() {
    Optional<LogEntry> entry = draft().flatMap(LogDraft::entry);
    if (entry.isPresent() && !log.isBusy()) {
      String boat = upkeep.boat().orElseThrow().id();
      Optional<LogEntry> original = draft().flatMap(LogDraft::original);
      Runnable done =
          () -> {
            drafts.remove(boat);
            afterWriting.accept(original.isPresent());
          };
      original.ifPresentOrElse(
          old -> log.replace(old, entry.get(), done), () -> log.add(List.of(entry.get()), done));
    }
    tell();
  }

  /** Empties the form. */
  void clear() {
    upkeep.boat().ifPresent(boat -> drafts.remove(boat.id()));
    tell();
  }

  /** Boats whose half-typed forms would be lost, by id. */
  public Set<String> halfTyped() {
    Set<String> boats = new TreeSet<>();
    drafts.forEach(
        (boat, draft) -> {
          if (draft.isTouched()) {
            boats.add(boat);
          }
        });
    return boats;
  }

  /** The place's own model. */
  UpkeepModel upkeep() {
    return upkeep;
  }
}
