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
final class LoggedWork {
  private final Map<String, LocalDate> first = new HashMap<>();
  private final Map<String, LogEntry> last = new HashMap<>();
  private final Map<String, IntervalStart> reset = new HashMap<>();
  private final LocalDate isNew;

  /**
   * A history.
   *
   * @param log in the order of its dates
   * @param isNew the day on which the boat was new
   */
  LoggedWork(List<LogEntry> log, Library library, LocalDate isNew) {
    this.isNew = isNew;
    for (LogEntry entry : log) {
      first.putIfAbsent(entry.work(), entry.date());
      last.put(entry.work(), entry);
    }
    last.forEach(
        (work, entry) ->
            library
                .procedure(work)
                .ifPresent(page -> page.details().resets().forEach(id -> reset(id, entry))));
  }

  private void reset(String id, LogEntry by) {
    IntervalStart since =
        new IntervalStart(by.date(), IntervalStart.Origin.RESET, by.work(), by.known());
    reset.merge(id, since, (a, b) -> later(a, b));
  }

  /** When work was last done, if it stands in the log. */
  Optional<LocalDate> lastDone(String id) {
    return Optional.ofNullable(last.get(id)).map(LogEntry::date);
  }

  /** From when the interval runs; empty while it waits for an event. */
  Optional<IntervalStart> since(Page<Procedure> page, Interval interval) {
    Optional<IntervalStart> event =
        interval
            .fromEvent()
            .flatMap(
                word ->
                    Optional.ofNullable(first.get(word))
                        .map(date -> new IntervalStart(date, IntervalStart.Origin.EVENT, word)));
    if (interval.fromEvent().isPresent() && event.isEmpty()) {
      return Optional.empty();
    }
    IntervalStart since =
        Optional.ofNullable(last.get(page.id()))
            .map(LoggedWork::done)
            .orElseGet(() -> new IntervalStart(isNew, IntervalStart.Origin.NEW, ""));
    IntervalStart resetBy = reset.get(page.id());
    since = resetBy == null ? since : later(since, resetBy);
    return Optional.of(event.isPresent() ? later(since, event.get()) : since);
  }

  private static IntervalStart done(LogEntry entry) {
    return new IntervalStart(entry.date(), IntervalStart.Origin.DONE, entry.work(), entry.known());
  }

  /** The later of two; the first when both are of the same day. */
  private static IntervalStart later(IntervalStart a, IntervalStart b) {
    return b.date().isAfter(a.date()) ? b : a;
  }
}
