package limberboard.upkeep.list;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;

/**
 * Chooses the work of a list. Immutable.
 *
 * @param upkeep what is due on the boat
 */
public record ListWork(Upkeep upkeep) {

  /**
   * The season that a list made on this day is for: the one that the day is in or that comes next;
   * for laying up, until the middle of the winter, still the one that is over.
   *
   * @return the year in which it begins
   */
  public int season(ListKind kind) {
    AfloatSeason next = upkeep.thisSeason();
    LocalDate on = upkeep.fitting().on();
    boolean early = !on.isAfter(upkeep.seasons().layingUpEnds(next.year() - 1));
    return kind == ListKind.LAYING_UP && early ? next.year() - 1 : next.year();
  }

  /** What falls due for the season of a year. */
  public List<Task> due(ListKind kind, int year) {
    return upkeep.season(year).tasks(phases(kind)).stream()
        .map(task -> inItsPhase(task, kind))
        .toList();
  }

  /**
   * What falls due, and behind it all other work, which has no day and says when it will be due.
   */
  public List<Task> everything(ListKind kind, int year) {
    List<Task> all = new ArrayList<>(due(kind, year));
    upkeep.season(year).others(phases(kind)).stream()
        .map(task -> new Task(task.work(), task.phase(), task.why(), Optional.empty()))
        .forEach(all::add);
    return all;
  }

  /** A look again is done in the phase that its page names: the keel's oil is read afloat. */
  private static Task inItsPhase(Task task, ListKind kind) {
    Optional<Phase> named = task.work().details().interval().flatMap(Interval::phase);
    return named.filter(kind.phases()::contains).map(task::in).orElse(task);
  }

  private static Set<Phase> phases(ListKind kind) {
    return EnumSet.copyOf(kind.phases());
  }
}
