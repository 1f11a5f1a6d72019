package limberboard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Phase;

/**
 * The work of one season, for lists and shopping.
 *
 * @param season the season
 * @param planned all that is expected for it, by day; the same work as often as it comes
 * @param notDue work with an interval that is not due for it, with the reason and its day
 */
public record SeasonWork(AfloatSeason season, List<Planned> planned, List<Due> notDue) {
  /** Copies the lists. */
  public SeasonWork {
    planned = List.copyOf(planned);
    notDue = List.copyOf(notDue);
  }

  /** The work to be done in these phases, each once, by the day it is first planned for. */
  public List<Task> tasks(Set<Phase> phases) {
    List<Task> tasks = new ArrayList<>();
    Set<WorkId> seen = new HashSet<>();
    for (Planned each : planned) {
      Phase phase = phase(each.phase(), each.work(), each.day());
      if (phases.contains(phase) && seen.add(each.which())) {
        tasks.add(new Task(each.work(), phase, why(each), each.lastDay(), each.round(), List.of()));
      }
    }
    return List.copyOf(tasks);
  }

  /** What is not due for the season in these phases, for a complete list. */
  public List<Task> others(Set<Phase> phases) {
    return notDue.stream()
        .map(
            due ->
                new Task(
                    due.work(),
                    phase(due.phase(), due.work(), due.plan()),
                    whyNot(due),
                    due.lastDay()))
        .filter(task -> phases.contains(task.phase()))
        .toList();
  }

  private static Why whyNot(Due due) {
    return due.lastDay()
        .filter(day -> !(due.why() instanceof Why.DoneWith))
        .<Why>map(day -> new Why.NotYet(day, due.why()))
        .orElse(due.why());
  }

  private static Why why(Planned each) {
    return each.why() instanceof Why.LookAgain again ? new Why.Named(again) : each.why();
  }

  /**
   * The phase of work whose page names none: afloat when its day is in the season, otherwise
   * ashore, with the mast down where its access asks for that.
   */
  private Phase phase(Optional<Phase> named, Page<Procedure> work, LocalDate day) {
    if (named.isPresent()) {
      return named.get();
    }
    List<String> access = work.details().access();
    if (access.contains("mast-down")) {
      return Phase.ASHORE_MAST_DOWN;
    }
    return season.contains(day) && !access.contains("hauled-out")
        ? Phase.AFLOAT
        : Phase.ASHORE_MAST_UP;
  }
}
