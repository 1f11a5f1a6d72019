package limberboard.upkeep.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.boat.AccessWays;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Phase;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.OneGo;
import limberboard.upkeep.plan.choice.ChoiceSearch;
import limberboard.upkeep.plan.choice.Chore;
import limberboard.upkeep.plan.choice.Chores;
import limberboard.upkeep.plan.choice.DayChoice;
import limberboard.upkeep.plan.choice.Meeting;
import limberboard.upkeep.plan.choice.Meetings;

/** The due work and the days as numbers. Not changed once made. */
final class PlanQuestion {
  private static final List<Phase> STAGES =
      List.of(
          Phase.LAY_UP,
          Phase.ASHORE_MAST_DOWN,
          Phase.ASHORE_MAST_UP,
          Phase.AFLOAT,
          Phase.UNDER_SAIL);

  private final Upkeep upkeep;
  private final PlanWish wish;
  private final List<DueWork> works;
  private final List<Task> tasks = new ArrayList<>();
  private final OneGo.Earlier order;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<String, Integer> openings = new LinkedHashMap<>();
  private final List<Access> accesses = new ArrayList<>();
  private final Map<Phase, Set<String>> standing = new EnumMap<>(Phase.class);
  private final List<Set<Integer>> opens = new ArrayList<>();
  private final int[] stages;
  private final Chores chores;
  private final List<Meeting> meetings;
  private final long comfortUnit;

  PlanQuestion(Upkeep upkeep, PlanWish wish, List<DueWork> works) {
    this.upkeep = upkeep;
    this.wish = wish;
    this.works = works;
    for (DueWork work : works) {
      numbers.put(work.work().id(), tasks.size());
      tasks.add(work.task(phase(work)));
    }
    order = OneGo.earlier(tasks);
    tasks.forEach(task -> opens.add(opens(task)));
    stages = new int[works.size()];
    for (int i = 0; i < stages.length; i++) {
      stages[i] = stage(i, new HashSet<>());
    }
    comfortUnit = comfortUnit();
    chores = chores();
    meetings = Meetings.possible(chores, meetings());
  }

  /** What work of this does other work of it as well. */
  private List<Meeting> meetings() {
    List<Meeting> all = new ArrayList<>();
    for (int doer = 0; doer < works.size(); doer++) {
      for (int met = 0; met < works.size(); met++) {
        if (doer != met && works.get(doer).does(works.get(met))) {
          all.add(new Meeting(doer, met));
        }
      }
    }
    return all;
  }

  /** The best choice found. */
  DayChoice choice() {
    return Meetings.of(chores, meetings, ChoiceSearch.USUAL_STEPS);
  }

  /** Numbers of the work that does this as well, in order. */
  List<Integer> doers(int number) {
    return meetings.stream().filter(each -> each.met() == number).map(Meeting::doer).toList();
  }

  /**
   * What one unit of danger counts: all the comfort there is, and one more; 0 where numbers would
   * grow beyond what can be reckoned exactly, and comfort is left out.
   */
  private long comfortUnit() {
    long comfort = 1;
    double danger = 1;
    double minutes = 1;
    for (DueWork work : works) {
      comfort += work.comfort();
      danger += work.danger(wish.until());
      minutes += wish.minutes(work.minutes());
    }
    for (Access access : accesses) {
      minutes += wish.minutes(access.minutes());
    }
    return comfort * (danger + 1) * minutes < Chores.MOST ? comfort : 0;
  }

  /** The phase of work whose page names none is that of the first day. */
  private Phase phase(DueWork work) {
    LocalDate first = wish.days().days().get(0).day();
    return work.phase()
        .orElse(upkeep.seasons().afloat(first) ? Phase.AFLOAT : Phase.ASHORE_MAST_UP);
  }

  private Set<Integer> opens(Task task) {
    Set<String> open =
        standing.computeIfAbsent(
            task.phase(),
            phase ->
                upkeep.fitting().boat().model().details().access().stream()
                    .filter(access -> access.openIn().contains(phase))
                    .map(Access::id)
                    .collect(Collectors.toSet()));
    Set<Integer> opens = new HashSet<>();
    if (!needsOpening(task)) {
      return opens;
    }
    for (Access access : new AccessWays(upkeep.fitting()).toOpen(task.access(), open)) {
      if (openings.putIfAbsent(access.id(), accesses.size()) == null) {
        accesses.add(access);
      }
      opens.add(openings.get(access.id()));
    }
    return opens;
  }

  /** Whoever comes to do work opens what it needs. */
  boolean needsOpening(Task task) {
    return works.get(number(task)).appointment().isEmpty();
  }

  /** The stage of work is its own, or a later one of what comes before it. */
  private int stage(int number, Set<Integer> seen) {
    int stage = works.get(number).phase().map(STAGES::indexOf).orElse(Chore.ANY_STAGE);
    if (seen.add(number)) {
      for (int before : after(number)) {
        stage = Math.max(stage, stage(before, seen));
      }
    }
    return stage;
  }

  /** Numbers of the work that must be done before this. */
  Set<Integer> after(int number) {
    return earlier(number).filter(i -> works.get(i).holdsUp()).collect(Collectors.toSet());
  }

  /**
   * Numbers of the work that comes before this where it is done at all: what must be done before it
   * is left out, and what comes before that is counted too.
   */
  private Set<Integer> behind(int number) {
    Set<Integer> all = new HashSet<>();
    List<Integer> open = new ArrayList<>(List.of(number));
    while (!open.isEmpty()) {
      earlier(open.remove(open.size() - 1)).filter(all::add).forEach(open::add);
    }
    all.removeAll(after(number));
    return all;
  }

  private Stream<Integer> earlier(int number) {
    return order.earlier().get(tasks.get(number).work().id()).stream().map(numbers::get);
  }

  private Chores chores() {
    List<Chore> all = new ArrayList<>();
    for (int i = 0; i < works.size(); i++) {
      DueWork work = works.get(i);
      Window window = window(i);
      long danger = work.danger(wish.until());
      long worth = comfortUnit == 0 ? danger : danger * comfortUnit + work.comfort();
      all.add(
          new Chore(
              minutes(i),
              worth,
              after(i),
              opens.get(i),
              window.first(),
              window.last(),
              stages[i],
              behind(i)));
    }
    return new Chores(
        all,
        accesses.stream().map(access -> wish.minutes(access.minutes())).toList(),
        wish.days().days().stream().map(FreeDay::minutes).toList());
  }

  /**
   * Days on which work can be done.
   *
   * @param first number of the first
   * @param last number of the last; before the first when there is none
   * @param why why there is none, if so
   */
  record Window(int first, int last, Optional<Undone.Reason> why) {}

  /**
   * The first days in a row on which she is as the work needs her, and those who do it can come.
   */
  Window window(int number) {
    DueWork work = works.get(number);
    LocalDate bookable = upkeep.fitting().on().plus(work.book());
    int first = -1;
    int last = -1;
    boolean lies = false;
    List<FreeDay> days = wish.days().days();
    for (int i = 0; i < days.size() && (first < 0 || last == i - 1); i++) {
      if (suits(work, days.get(i).day())) {
        lies = true;
        if (!days.get(i).day().isBefore(bookable)) {
          first = first < 0 ? i : first;
          last = i;
        }
      }
    }
    if (first >= 0) {
      return new Window(first, last, Optional.empty());
    }
    boolean afloat = isAfloat(work);
    Undone.Reason why = afloat ? Undone.Reason.NEEDS_HER_AFLOAT : Undone.Reason.NEEDS_HER_ASHORE;
    if (!afloat && days.stream().anyMatch(day -> !upkeep.seasons().afloat(day.day()))) {
      why = Undone.Reason.FOR_LAYING_UP;
    }
    return new Window(0, -1, Optional.of(lies ? Undone.Reason.TOO_LATE_TO_BOOK : why));
  }

  /** Whether she is as the work needs her; what keeps the frost out needs a day before it. */
  private boolean suits(DueWork work, LocalDate day) {
    if (work.isForWinter()) {
      int laidUp = upkeep.seasons().around(day).year() - 1;
      return !upkeep.seasons().afloat(day) && !day.isAfter(upkeep.seasons().layingUpEnds(laidUp));
    }
    return work.phase().isEmpty() || upkeep.seasons().afloat(day) == isAfloat(work);
  }

  /** Whether it is done afloat only. */
  private static boolean isAfloat(DueWork work) {
    return work.phase()
        .filter(phase -> phase == Phase.AFLOAT || phase == Phase.UNDER_SAIL)
        .isPresent();
  }

  /** What work takes this person, without opening anything. */
  int minutes(int number) {
    return wish.minutes(works.get(number).minutes());
  }

  /** What work takes with all that has to be opened for it alone. */
  int minutesAlone(int number) {
    return minutes(number) + opening(opens.get(number));
  }

  private int opening(Set<Integer> numbers) {
    return numbers.stream().mapToInt(i -> wish.minutes(accesses.get(i).minutes())).sum();
  }

  /** What some work takes at least: each access once. */
  int minutes(Set<Integer> some) {
    Set<Integer> open = new HashSet<>();
    some.forEach(number -> open.addAll(opens.get(number)));
    return some.stream().mapToInt(this::minutes).sum() + opening(open);
  }

  Chores numbers() {
    return chores;
  }

  List<DueWork> works() {
    return works;
  }

  Task task(int number) {
    return tasks.get(number);
  }

  int stage(Task task) {
    return stages[numbers.get(task.work().id())];
  }

  int number(Task task) {
    return numbers.get(task.work().id());
  }

  OneGo.Earlier order() {
    return order;
  }

  /** The danger in what a choice is worth. */
  long danger(long worth) {
    return worth / Math.max(1, comfortUnit);
  }
}
