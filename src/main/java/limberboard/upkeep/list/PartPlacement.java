package limberboard.upkeep.list;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.AccessWays;
import limberboard.boat.Fitting;
import limberboard.library.page.Model.Access;
import limberboard.library.problem.Problem;
import limberboard.library.value.Phase;
import limberboard.upkeep.Task;

/**
 * Puts each piece of work in its part: its own, or a later one when work of that part comes before
 * it. Work whose page names no phase rather goes to the part of the earliest work that waits for
 * it. Where a place then no longer stands open that would have in its own part, the pages
 * contradict each other, and that is reported; the order is kept all the same. For one list, on one
 * thread.
 */
final class PartPlacement {
  private final Fitting fitting;
  private final Order order;
  private final Map<String, Task> tasks = new LinkedHashMap<>();
  private final Map<String, Phase> wanted = new HashMap<>();
  private final Map<String, Phase> phases = new HashMap<>();
  private final Map<String, ListLine.Moved> moved = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  PartPlacement(List<Task> all, Order order, Fitting fitting) {
    this.fitting = fitting;
    this.order = order;
    all.forEach(task -> tasks.put(task.work().id(), task));
    List<Task> lineUp = lineUp(all);
    for (int i = lineUp.size() - 1; i >= 0; i--) {
      wanted.put(lineUp.get(i).work().id(), wanted(lineUp.get(i)));
    }
    lineUp.forEach(this::place);
  }

  /** The work with everything after what comes before it. */
  private List<Task> lineUp(List<Task> all) {
    Set<String> placed = new LinkedHashSet<>();
    Deque<String> free = new ArrayDeque<>();
    Map<String, Integer> waitsFor = new HashMap<>();
    for (Task task : all) {
      String id = task.work().id();
      waitsFor.put(id, order.earlier(id).size());
      if (waitsFor.get(id) == 0) {
        free.addLast(id);
      }
    }
    while (!free.isEmpty()) {
      String id = free.removeFirst();
      placed.add(id);
      order.later(id).stream()
          .filter(next -> waitsFor.merge(next, -1, Integer::sum) == 0)
          .forEach(free::addLast);
    }
    return placed.stream().map(tasks::get).toList();
  }

  private Phase wanted(Task task) {
    boolean fixed =
        task.work().details().interval().flatMap(interval -> interval.phase()).isPresent();
    return fixed
        ? task.phase()
        : order.later(task.work().id()).stream()
            .map(wanted::get)
            .filter(phase -> phase.compareTo(task.phase()) < 0)
            .min(Comparator.naturalOrder())
            .orElse(task.phase());
  }

  private void place(Task task) {
    String id = task.work().id();
    Phase phase = wanted.get(id);
    Optional<String> because = Optional.empty();
    for (String before : order.earlier(id)) {
      if (phases.get(before).compareTo(phase) > 0) {
        phase = phases.get(before);
        because = Optional.of(before);
      }
    }
    phases.put(id, phase);
    if (because.isPresent()) {
      String title = tasks.get(because.get()).work().title();
      moved.put(id, new ListLine.Moved(task.phase(), title));
      contradiction(task, phase, because.get()).ifPresent(problems::add);
    }
  }

  private Optional<Problem> contradiction(Task task, Phase to, String before) {
    return new AccessWays(fitting)
        .toOpen(task.access(), Set.of()).stream()
            .filter(access -> access.openIn().contains(task.phase()))
            .filter(access -> !access.openIn().contains(to))
            .findFirst()
            .map(access -> problem(task, to, before, access));
  }

  private Problem problem(Task task, Phase to, String before, Access access) {
    return Problem.warning(
        task.work().path(),
        0,
        "interval.phase",
        "is done "
            + task.phase().spoken()
            + ", where it has \""
            + access.title()
            + "\", but comes after "
            + before
            + ", which is done "
            + to.spoken(),
        "give both a phase in which they can follow each other, or take "
            + task.work().id()
            + " out of the other's before");
  }

  /** The part that a piece of work stands in. */
  Phase phase(Task task) {
    return phases.get(task.work().id());
  }

  /** Why a piece of work does not stand in its own part; empty when it does. */
  Optional<ListLine.Moved> moved(Task task) {
    return Optional.ofNullable(moved.get(task.work().id()));
  }

  /** What the pages say that does not go together. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }
}
