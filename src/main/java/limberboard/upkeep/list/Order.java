package limberboard.upkeep.list;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import limberboard.library.check.Circles;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Problem;
import limberboard.library.value.Work;
import limberboard.upkeep.Task;
import limberboard.upkeep.Why;

/**
 * What comes before what among the work of one list. Pages that run in a circle, or name
 * themselves, do not count, and are reported. Only work that is on the list counts: A before B and
 * B before C say nothing of A and C when B is not there. Immutable.
 */
final class Order {
  private final Map<String, Set<String>> earlier = new HashMap<>();
  private final Map<String, Set<String>> later = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();

  /** The order of this work, each page of which stands there once. */
  Order(List<Task> tasks) {
    Map<String, Page<Procedure>> pages = new LinkedHashMap<>();
    Map<String, String> lineOf = new HashMap<>();
    for (Task task : tasks) {
      pages.put(task.work().id(), task.work());
      task.pages().forEach(page -> lineOf.put(page.id(), task.work().id()));
    }
    Map<String, SortedSet<String>> named = new LinkedHashMap<>();
    tasks.forEach(task -> named.put(task.work().id(), later(task, lineOf)));
    Map<String, SortedSet<String>> circleOf = new HashMap<>();
    for (SortedSet<String> circle : Circles.of(named)) {
      circle.forEach(id -> circleOf.put(id, circle));
      problems.add(problem(circle, named, pages));
    }
    named.forEach(
        (id, after) ->
            after.stream()
                .filter(each -> !circleOf.getOrDefault(id, new TreeSet<>()).contains(each))
                .forEach(each -> add(id, each)));
    Set<String> looks =
        tasks.stream()
            .flatMap(task -> task.pages().stream())
            .filter(page -> page.details().work() == Work.INSPECT)
            .map(Page::id)
            .collect(Collectors.toSet());
    tasks.forEach(task -> lookFirst(task, lineOf, looks));
  }

  /**
   * What nobody knows when it was done is looked at before it is renewed: by the inspection that
   * the renewal would make needless. What the pages say comes first where that contradicts it.
   */
  private void lookFirst(Task task, Map<String, String> lineOf, Set<String> looks) {
    String renewal = task.work().id();
    task.all()
        .filter(each -> each.why() instanceof Why.NotKnown)
        .flatMap(each -> each.work().details().resets().stream())
        .filter(looks::contains)
        .map(lineOf::get)
        .filter(look -> !isBefore(renewal, look))
        .forEach(look -> add(look, renewal));
  }

  /** Whether the one comes before the other, directly or not, or is the same. */
  private boolean isBefore(String first, String second) {
    Deque<String> open = new ArrayDeque<>(List.of(first));
    Set<String> seen = new HashSet<>(open);
    while (!open.isEmpty()) {
      String next = open.pop();
      if (next.equals(second)) {
        return true;
      }
      later(next).stream().filter(seen::add).forEach(open::push);
    }
    return false;
  }

  private void add(String first, String second) {
    earlier.computeIfAbsent(second, key -> new TreeSet<>()).add(first);
    later.computeIfAbsent(first, key -> new TreeSet<>()).add(second);
  }

  /** The lines that come after a line; of a round, after anything that is done with it. */
  private SortedSet<String> later(Task task, Map<String, String> lineOf) {
    SortedSet<String> later = new TreeSet<>();
    for (Page<Procedure> page : task.pages()) {
      page.details().before().stream()
          .map(lineOf::get)
          .filter(Objects::nonNull)
          .filter(line -> !line.equals(task.work().id()))
          .forEach(later::add);
      if (page.details().before().contains(page.id())) {
        problems.add(
            Problem.error(page.path(), 0, "before", "comes before itself", "take its own id out"));
      }
    }
    return later;
  }

  private static Problem problem(
      SortedSet<String> circle,
      Map<String, SortedSet<String>> later,
      Map<String, Page<Procedure>> pages) {
    List<String> way = Circles.way(circle.first(), circle, later);
    return Problem.error(
        pages.get(circle.first()).path(),
        0,
        "before",
        "runs in a circle: " + String.join(" before ", way) + "; their order is left open",
        "take one of them out of before, the one that may wait");
  }

  /** Ids of the work that comes before this. */
  Set<String> earlier(String id) {
    return earlier.getOrDefault(id, Set.of());
  }

  /** Ids of the work that comes after this. */
  Set<String> later(String id) {
    return later.getOrDefault(id, Set.of());
  }

  /** What is wrong in the pages. */
  List<Problem> problems() {
    return List.copyOf(problems);
  }
}
