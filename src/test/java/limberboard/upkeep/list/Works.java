package limberboard.upkeep.list;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.Why;

/** Work for lists of tests. */
public final class Works {
  private Works() {}

  /** All work with an interval, due or not. */
  public static List<Task> everything(Library library, Fitting fitting, ListKind kind) {
    ListWork work = new ListWork(Upkeep.of(library, fitting));
    return work.everything(kind, work.season(kind));
  }

  /** All procedures that are for the boat, mends included. */
  static List<Task> withMends(Library library, Fitting fitting, ListKind kind) {
    return library.all(Procedure.class).stream()
        .filter(page -> fitting.fits(page.head().fits()))
        .map(page -> new Task(page, phase(page), reason(page), Optional.empty()))
        .filter(task -> kind.phases().contains(task.phase()))
        .toList();
  }

  /** That it has been done, and is to be looked at again. */
  static Why reason(Page<Procedure> page) {
    return new Why.LookAgain(Period.ofMonths(1), page.title(), LocalDate.of(2026, 1, 1));
  }

  /** The phase that a page names; ashore with the mast up where it names none. */
  static Phase phase(Page<Procedure> page) {
    return page.details().interval().flatMap(Interval::phase).orElse(Phase.ASHORE_MAST_UP);
  }
}
