package limberboard.desktop.upkeep.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.boat.HowKnown;
import limberboard.boat.LogEntry;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.state.UpkeepModel.Work;
import limberboard.library.value.LogEvents;

/**
 * A line of the log while it is typed or corrected. Immutable but for what is typed into the form.
 *
 * @param kind an event, or {@link #WORK}
 * @param typed what was typed to find the work
 * @param work the work that was found
 * @param form day, hours, counts and note
 * @param original the line that is corrected; empty for a new one
 */
public record LogDraft(
    String kind, String typed, Optional<Work> work, EntryForm form, Optional<LogEntry> original) {
  /** The kind of a line that says that the work of a page was done. */
  public static final String WORK = "work";

  private static final int MOST = 7;

  /** An empty draft. */
  static LogDraft empty(String kind, LocalDate today, List<String> uses) {
    EntryForm form = new EntryForm("", Optional.empty(), today, uses);
    return new LogDraft(kind, "", Optional.empty(), form, Optional.empty()).formed();
  }

  /** A draft that corrects a line. */
  static LogDraft of(LogEntry entry, String title, LocalDate today, List<String> uses) {
    boolean event = LogEvents.ALL.contains(entry.work());
    Optional<Work> work =
        event
            ? entry.of().map(of -> new Work(of, title))
            : Optional.of(new Work(entry.work(), title));
    return new LogDraft(
        event ? entry.work() : WORK,
        work.map(Work::title).orElse(""),
        work,
        EntryForm.of(entry, today, uses),
        Optional.of(entry));
  }

  /** Whether work has to be named. */
  boolean needsWork() {
    return kind.equals(WORK) || kind.equals(LogEvents.LOOKED_AGAIN);
  }

  LogDraft kind(String other) {
    return new LogDraft(other, typed, work, form, original).formed();
  }

  /** The same while other words for the work are typed; the whole title finds it at once. */
  LogDraft typed(String words, List<Work> all) {
    Optional<Work> found =
        all.stream().filter(each -> each.title().equalsIgnoreCase(words.strip())).findFirst();
    return new LogDraft(kind, words, found, form, original).formed();
  }

  LogDraft work(Work found) {
    return new LogDraft(kind, found.title(), Optional.of(found), form, original).formed();
  }

  private LogDraft formed() {
    Optional<String> id = work.map(Work::id);
    EntryForm other =
        switch (kind) {
          case WORK -> form.with(id.orElse(""), Optional.empty());
          case LogEvents.LOOKED_AGAIN -> form.with(kind, id);
          default -> form.with(kind, Optional.empty());
        };
    return new LogDraft(kind, typed, work, other, original);
  }

  /**
   * Work that has all the words typed, titles that begin with them first; none once it is found.
   */
  List<Work> matches(List<Work> all) {
    if (!needsWork() || work.isPresent() || typed.isBlank()) {
      return List.of();
    }
    String[] words = typed.strip().toLowerCase(Locale.ROOT).split("\\s+");
    return all.stream()
        .filter(each -> hasAll(each.title().toLowerCase(Locale.ROOT), words))
        .sorted((a, b) -> Boolean.compare(begins(b), begins(a)))
        .limit(MOST)
        .toList();
  }

  private boolean begins(Work each) {
    String title = each.title().toLowerCase(Locale.ROOT);
    return title.startsWith(typed.strip().toLowerCase(Locale.ROOT));
  }

  private static boolean hasAll(String title, String... words) {
    for (String word : words) {
      if (!title.contains(word)) {
        return false;
      }
    }
    return true;
  }

  /** The line, if it says something and nothing in it is wrong. */
  Optional<LogEntry> entry() {
    return needsWork() && work.isEmpty()
        ? Optional.empty()
        : form.entry().filter(LogDraft::tells).map(this::known);
  }

  /** How it is known stays when a line is corrected; a day written out is known to the day. */
  private LogEntry known(LogEntry entry) {
    return entry.known(
        original.flatMap(
            before ->
                before.date().equals(entry.date())
                    ? before.known()
                    : before.known().map(HowKnown::toTheDay)));
  }

  private static boolean tells(LogEntry entry) {
    return !entry.work().equals(LogEvents.READING)
        || entry.engineHours().isPresent()
        || !entry.uses().isEmpty()
        || !entry.note().isEmpty();
  }

  /** Whether anything was typed that would be lost. */
  boolean isTouched() {
    String before = original.isPresent() ? work.map(Work::title).orElse("") : "";
    return form.isTouched() || !typed.equals(before);
  }
}
