package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.library.problem.Problem;
import limberboard.library.value.Need;

/**
 * What to do on a boat in the time there is, and what stays undone.
 *
 * @param fitting the boat on the day of asking
 * @param wish what was asked for
 * @param days the days, in order
 * @param undone what is due and stays undone, the gravest first
 * @param proof how good the choice is
 * @param mustMinutes what all musts together take at least, as long as this person takes
 * @param launch the day of the launching that the work is due before; the day of asking when she is
 *     afloat
 * @param problems what the pages say that cannot be kept
 */
public record WorkPlan(
    Fitting fitting,
    PlanWish wish,
    List<PlanDay> days,
    List<Undone> undone,
    Proof proof,
    int mustMinutes,
    LocalDate launch,
    List<Problem> problems) {
  /** Copies the lists. */
  public WorkPlan {
    days = List.copyOf(days);
    undone = List.copyOf(undone);
    problems = List.copyOf(problems);
  }

  /** All lines, in order. */
  public Stream<PlanLine> lines() {
    return days.stream().flatMap(day -> day.lines().stream());
  }

  /**
   * Whether she is afloat before the day by which all is to be done: what is to be done by the day
   * of the launch is done ashore.
   */
  public boolean isAfloat() {
    return launch.isBefore(wish.until());
  }

  /** Musts that stay undone. */
  public List<Undone> mustsUndone() {
    return undone.stream().filter(each -> each.work().need() == Need.MUST).toList();
  }

  /**
   * What stays undone although it must be done, can sink her or hurt somebody, and has run out by
   * the launching, or while she is afloat by the date: until it is done she is not to be used.
   */
  public List<Undone> forbidding() {
    LocalDate by = isAfloat() ? wish.until() : launch;
    List<Undone> grave = new ArrayList<>(mustsUndone());
    grave.removeIf(each -> each.work().graveRunsOut().filter(day -> !day.isAfter(by)).isEmpty());
    return List.copyOf(grave);
  }
}
