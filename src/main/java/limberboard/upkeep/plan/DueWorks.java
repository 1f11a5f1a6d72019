package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.value.Interval;
import limberboard.library.value.Phase;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Due;
import limberboard.upkeep.Upkeep;

/** Finds the work that a plan is made of: what is due before a date, each page once. Stateless. */
final class DueWorks {
  /** What takes as long within a round, in minutes of somebody practised, is planned by itself. */
  private static final int HALF_A_DAY = 240;

  private DueWorks() {}

  /**
   * What is overdue, and what runs out or is best done by a date; when she is still laid up then,
   * by the day before her launching. Work of a round that other due work does as well stands by
   * itself, and so does what takes half a day or more within its round.
   */
  static List<DueWork> of(Upkeep upkeep, LocalDate until) {
    LocalDate last = horizon(upkeep, until);
    List<Due> due =
        upkeep.all().stream().filter(each -> isDue(each, upkeep.fitting().on(), last)).toList();
    Map<String, List<Due>> byPage = new LinkedHashMap<>();
    for (Due each : due) {
      if (each.round().isEmpty()) {
        List<Due> apart =
            each.with().stream()
                .filter(with -> with.ownerMinutes() >= HALF_A_DAY || isMet(with, upkeep, due))
                .toList();
        add(each.without(apart), byPage);
        apart.forEach(with -> add(with.alone(), byPage));
      }
    }
    return byPage.values().stream().map(DueWorks::of).toList();
  }

  private static void add(Due due, Map<String, List<Due>> byPage) {
    byPage.computeIfAbsent(due.work().id(), id -> new ArrayList<>()).add(due);
  }

  /** Whether it is over now, or runs out or is best done by a last day. */
  private static boolean isDue(Due due, LocalDate on, LocalDate last) {
    return due.runsOut()
        .filter(day -> !day.isAfter(on) || !day.isAfter(last) || !due.plan().isAfter(last))
        .isPresent();
  }

  /** Work of a round that other due work does as well stands by itself, to be met by that. */
  private static boolean isMet(Due with, Upkeep upkeep, List<Due> due) {
    return upkeep.doneBy(with).filter(doer -> isThere(doer, due)).isPresent();
  }

  private static boolean isThere(Due doer, List<Due> due) {
    return due.stream()
        .filter(each -> each.round().isEmpty())
        .flatMap(each -> each.all().stream())
        .anyMatch(each -> each.which().equals(doer.which()));
  }

  /** The date, or when she is still laid up then, the day before her launching. */
  static LocalDate horizon(Upkeep upkeep, LocalDate until) {
    AfloatSeason season = upkeep.seasons().around(until);
    return season.contains(until) ? until : season.from().minusDays(1);
  }

  private static DueWork of(List<Due> dues) {
    List<Due> workFirst = new ArrayList<>(dues);
    workFirst.sort(Comparator.comparing(Due::isLookAgain));
    return new DueWork(workFirst, phase(workFirst.get(0), workFirst.get(0).work()));
  }

  /** Its own phase, or that of its page, or what its access asks for. */
  private static Optional<Phase> phase(Due due, Page<Procedure> page) {
    Optional<Phase> named =
        due.phase().or(() -> page.details().interval().flatMap(Interval::phase));
    if (named.isEmpty() && page.details().access().contains("mast-down")) {
      return Optional.of(Phase.ASHORE_MAST_DOWN);
    }
    return named.isEmpty() && page.details().access().contains("hauled-out")
        ? Optional.of(Phase.ASHORE_MAST_UP)
        : named;
  }
}
