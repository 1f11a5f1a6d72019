package limberboard.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.HowKnown.From;
import limberboard.boat.LogEntry;
import limberboard.boat.WorkMinutes;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.LookAgain;
import limberboard.library.value.LogEvents;

/**
 * Work that is to be looked at again. It counts as looked at once the log says so: with the event
 * {@code looked-again}, or with the inspection that the page names, at the earliest when half the
 * time has passed. What nobody logged lapses after four times its length, but not within {@value
 * #LEAST_DAYS} days.
 */
final class FollowUps {
  private static final int LEAST_DAYS = 90;
  private static final int LAPSES_AFTER_TIMES = 4;

  /**
   * One of them.
   *
   * @param work what was done
   * @param done when
   * @param length how long after
   * @param due when to look again
   * @param with the inspection to do it with; the same page where it is the work's own last test
   */
  record FollowUp(
      Page<Procedure> work, LocalDate done, Period length, LocalDate due, Page<Procedure> with) {
    Why.LookAgain why() {
      return new Why.LookAgain(length, work.title(), done);
    }
  }

  private final Library library;
  private final WorkMinutes minutes;
  private final List<LogEntry> log;
  private final LocalDate on;

  FollowUps(Library library, WorkMinutes minutes, List<LogEntry> log, LocalDate on) {
    this.library = library;
    this.minutes = minutes;
    this.log = log;
    this.on = on;
  }

  /** All that are open on the day, or have been open without having lapsed. */
  List<FollowUp> open(LoggedWork history) {
    List<FollowUp> open = new ArrayList<>();
    for (String work : done()) {
      Optional<Page<Procedure>> page = library.procedure(work);
      Optional<LocalDate> done = history.lastDone(work);
      if (page.isPresent() && done.isPresent()) {
        after(page.get(), done.get())
            .filter(followUp -> !hasLapsed(followUp) && !isLookedAt(followUp))
            .ifPresent(open::add);
      }
    }
    return open;
  }

  /** All work that was done; what a survey tells of is itself a look, and needs none again. */
  private List<String> done() {
    return log.stream()
        .filter(entry -> entry.known().filter(how -> how.from() == From.SURVEY).isEmpty())
        .map(LogEntry::work)
        .distinct()
        .sorted()
        .toList();
  }

  /** What follows when work is done on a day. */
  Optional<FollowUp> after(Page<Procedure> work, LocalDate done) {
    Optional<LookAgain> again = work.details().lookAgain();
    boolean isItsOwnInterval =
        work.details().interval().isPresent()
            && again.flatMap(LookAgain::with).filter(work.id()::equals).isPresent();
    return again
        .filter(look -> !isItsOwnInterval)
        .map(
            look ->
                new FollowUp(
                    work,
                    done,
                    look.after(),
                    done.plus(look.after()),
                    minutes.of(look.with().flatMap(library::procedure).orElse(work))));
  }

  private boolean hasLapsed(FollowUp followUp) {
    long length = ChronoUnit.DAYS.between(followUp.done(), followUp.due());
    long open = Math.max(LEAST_DAYS, length * LAPSES_AFTER_TIMES);
    return on.isAfter(followUp.done().plusDays(open));
  }

  private boolean isLookedAt(FollowUp followUp) {
    long length = ChronoUnit.DAYS.between(followUp.done(), followUp.due());
    LocalDate earliest = followUp.done().plusDays(Math.max(1, length / 2));
    return log.stream()
        .filter(entry -> !entry.date().isBefore(earliest))
        .anyMatch(entry -> looksAt(entry, followUp));
  }

  private static boolean looksAt(LogEntry entry, FollowUp followUp) {
    String work = followUp.work().id();
    String with = followUp.with().id();
    return entry.work().equals(LogEvents.LOOKED_AGAIN)
        ? entry.of().filter(work::equals).isPresent()
        : !with.equals(work) && entry.work().equals(with);
  }
}
