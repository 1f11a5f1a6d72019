package limberboard.upkeep;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.LogEntry;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;

/** What a boat's log tells of when work was last done. Immutable. */
final class History {
  private final Map<String, LocalDate> first = new HashMap<>();
  private final Map<String, LocalDate> last = new HashMap<>();
  private final Map<String, Since> reset = new HashMap<>();
  private final LocalDate isNew;

  /**
   * A history.
   *
   * @param log in the order of its dates
   * @param isNew the day on which the boat was new
   */
  History(List<LogEntry> log, Library library, LocalDate isNew) {
    this.isNew = isNew;
    for (LogEntry entry : log) {
      first.putIfAbsent(entry.work(), entry.date());
      last.put(entry.work(), entry.date());
    }
    last.forEach(
        (work, date) ->
            library
                .procedure(work)
                .ifPresent(page -> page.details().resets().forEach(id -> reset(id, work, date))));
  }

  private void reset(String id, String by, LocalDate date) {
    Since since = new Since(date, Since.Origin.RESET, by);
    reset.merge(id, since, (a, b) -> later(a, b));
  }

  /** When work was last done, if it stands in the log. */
  Optional<LocalDate> lastDone(String id) {
    return Optional.ofNullable(last.get(id));
  }

  /** From when the interval runs; empty while it waits for an event. */
  Optional<Since> since(Page<Procedure> page, Interval interval) {
    Optional<Since> event =
        interval
            .fromEvent()
            .flatMap(
                word ->
                    Optional.ofNullable(first.get(word))
                        .map(date -> new Since(date, Since.Origin.EVENT, word)));
    if (interval.fromEvent().isPresent() && event.isEmpty()) {
      return Optional.empty();
    }
    Since since =
        lastDone(page.id())
            .map(date -> new Since(date, Since.Origin.DONE, page.id()))
            .orElseGet(() -> new Since(isNew, Since.Origin.NEW, ""));
    Since resetBy = reset.get(page.id());
    since = resetBy == null ? since : later(since, resetBy);
    return Optional.of(event.isPresent() ? later(since, event.get()) : since);
  }

  /** The later of two; the first when both are of the same day. */
  private static Since later(Since a, Since b) {
    return b.date().isAfter(a.date()) ? b : a;
  }
}
