package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Need;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.OneGo;
import limberboard.upkeep.plan.choice.DayChoice;

/**
 * Plans the due work of a boat for the time there is. Immutable.
 *
 * @param upkeep what is due on the boat
 */
public record PlanMaker(Upkeep upkeep) {

  /**
   * The plan.
   *
   * @param wish the days there are, at least one, none before the day of {@code upkeep}
   * @throws IllegalArgumentException when there is no day
   */
  public WorkPlan plan(PlanWish wish) {
    if (wish.days().days().isEmpty()) {
      throw new IllegalArgumentException("there is no day to plan for");
    }
    PlanQuestion question =
        new PlanQuestion(upkeep, wish, gravestFirst(DueWorks.of(upkeep, wish.until()), wish));
    DayChoice choice = question.choice();
    List<PlanDay> days = new ArrayList<>();
    int next = 1;
    for (int day = 0; day < wish.days().days().size(); day++) {
      PlanDay made = day(question, choice, day, next, wish);
      days.add(made);
      next += made.lines().size();
    }
    return new WorkPlan(
        upkeep.fitting(),
        wish,
        days,
        undone(question, choice),
        proof(question, choice, wish),
        musts(question),
        upkeep.seasons().around(wish.until()).from(),
        question.order().problems());
  }

  private static List<DueWork> gravestFirst(List<DueWork> works, PlanWish wish) {
    return works.stream()
        .sorted(
            Comparator.comparing((DueWork work) -> -work.danger(wish.until()))
                .thenComparing(DueWork::consequence)
                .thenComparing(DueWork::need)
                .thenComparing(work -> work.runsOut().orElse(LocalDate.MAX))
                .thenComparing(work -> work.work().id()))
        .toList();
  }

  private PlanDay day(PlanQuestion question, DayChoice choice, int day, int first, PlanWish wish) {
    List<Task> tasks =
        choice.done().stream()
            .filter(i -> choice.days().get(i) == day)
            .map(question::task)
            .toList();
    OneGo.Went went =
        new OneGo(upkeep.fitting()).order(tasks, question::stage, question::needsOpening, first);
    List<PlanLine> lines = new ArrayList<>();
    int opening = 0;
    for (ListLine line : went.lines()) {
      int number = question.number(line.task());
      lines.add(
          new PlanLine(
              line,
              question.works().get(number),
              also(question, choice, number),
              question.minutes(number)));
      for (Access access : line.open()) {
        opening += wish.minutes(access.minutes());
      }
    }
    return new PlanDay(wish.days().days().get(day), lines, opening);
  }

  /** What work does as well, if it is the first of all that does it. */
  private static List<DueWork> also(PlanQuestion question, DayChoice choice, int doer) {
    return IntStream.range(0, question.works().size())
        .filter(i -> metBy(question, choice, i).filter(first -> first == doer).isPresent())
        .mapToObj(i -> question.works().get(i))
        .toList();
  }

  /** The chosen work that does this as well; empty when it is chosen itself, or not done at all. */
  private static Optional<Integer> metBy(PlanQuestion question, DayChoice choice, int number) {
    return choice.days().get(number) >= 0
        ? Optional.empty()
        : question.doers(number).stream().filter(i -> choice.days().get(i) >= 0).findFirst();
  }

  private static boolean isUndone(PlanQuestion question, DayChoice choice, int number) {
    return choice.days().get(number) < 0 && metBy(question, choice, number).isEmpty();
  }

  private static List<Undone> undone(PlanQuestion question, DayChoice choice) {
    return IntStream.range(0, question.works().size())
        .filter(i -> isUndone(question, choice, i))
        .mapToObj(i -> undone(question, choice, i))
        .toList();
  }

  private static Undone undone(PlanQuestion question, DayChoice choice, int number) {
    DueWork work = question.works().get(number);
    Optional<Undone.Reason> own = reason(question, number);
    if (own.isPresent()) {
      return new Undone(work, own.get(), "");
    }
    return question.after(number).stream()
        .sorted()
        .filter(i -> isUndone(question, choice, i))
        .findFirst()
        .map(i -> new Undone(work, Undone.Reason.WAITS, question.works().get(i).title()))
        .orElseGet(() -> new Undone(work, Undone.Reason.NO_TIME, ""));
  }

  /** Why work cannot be done on these days, whatever else is done; empty when it could. */
  private static Optional<Undone.Reason> reason(PlanQuestion question, int number) {
    PlanQuestion.Window window = question.window(number);
    if (window.why().isPresent()) {
      return window.why();
    }
    boolean fits =
        IntStream.rangeClosed(window.first(), window.last())
            .anyMatch(day -> question.minutesAlone(number) <= question.numbers().days().get(day));
    return fits ? Optional.empty() : Optional.of(Undone.Reason.NO_DAY_LONG_ENOUGH);
  }

  private static Set<Integer> before(PlanQuestion question, int number, Set<Integer> found) {
    for (int each : question.after(number)) {
      if (found.add(each)) {
        before(question, each, found);
      }
    }
    return found;
  }

  private static Proof proof(PlanQuestion question, DayChoice choice, PlanWish wish) {
    long all = question.works().stream().mapToLong(work -> work.danger(wish.until())).sum();
    return new Proof(
        question.danger(choice.worth()), question.danger(choice.most()), all, choice.isBest());
  }

  /**
   * What the musts take together, with what comes before them, and nothing that one of them does as
   * well.
   */
  private static int musts(PlanQuestion question) {
    Set<Integer> musts = new HashSet<>();
    for (int i = 0; i < question.works().size(); i++) {
      if (question.works().get(i).need() == Need.MUST) {
        musts.add(i);
        before(question, i, musts);
      }
    }
    for (int i = 0; i < question.works().size(); i++) {
      if (question.doers(i).stream().anyMatch(musts::contains)) {
        musts.remove(i);
      }
    }
    return question.minutes(musts);
  }
}
