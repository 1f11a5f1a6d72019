package limberboard.upkeep.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.library.page.Procedure.RoundWork;
import limberboard.library.problem.Problem;
import limberboard.library.value.Phase;
import limberboard.upkeep.InRound;
import limberboard.upkeep.Task;

/**
 * Makes lists of work for one boat. Immutable.
 *
 * @param fitting the boat on a day
 */
public record WorkListMaker(Fitting fitting) {

  /**
   * The work of a list in order. Work of other phases is left out; of work that is given twice the
   * first counts. Where orders are equally good, work stays as it is given.
   */
  public WorkList list(ListKind kind, List<Task> tasks) {
    Map<String, Task> once = new LinkedHashMap<>();
    tasks.stream()
        .filter(task -> kind.phases().contains(task.phase()))
        .forEach(task -> once.putIfAbsent(task.work().id(), task));
    List<Task> all = inRounds(once);
    Order order = new Order(all);
    PartPlacement placing = new PartPlacement(all, order, fitting);
    List<ListPart> parts = new ArrayList<>();
    int number = 1;
    for (Phase phase : kind.phases()) {
      List<Task> here = all.stream().filter(task -> placing.phase(task) == phase).toList();
      if (!here.isEmpty()) {
        parts.add(new PartMaker(fitting, phase, here).part(number, order, placing));
        number += here.size();
      }
    }
    List<Problem> problems = new ArrayList<>(order.problems());
    problems.addAll(placing.problems());
    return new WorkList(kind, fitting, parts, problems);
  }

  /** What is done with a round that is on the list goes into the round's line. */
  private static List<Task> inRounds(Map<String, Task> tasks) {
    Map<String, List<Task>> with = new LinkedHashMap<>();
    List<Task> lines = new ArrayList<>();
    for (Task task : tasks.values()) {
      Optional<String> round = task.round().map(InRound::round).filter(tasks::containsKey);
      round.ifPresentOrElse(
          id -> with.computeIfAbsent(id, key -> new ArrayList<>()).add(task),
          () -> lines.add(task));
    }
    return lines.stream()
        .map(line -> line.with(inOrder(line, with.getOrDefault(line.work().id(), List.of()))))
        .toList();
  }

  /** In the order in which the round's page names them. */
  private static List<Task> inOrder(Task round, List<Task> with) {
    List<String> order = round.work().details().round().stream().map(RoundWork::work).toList();
    return with.stream()
        .sorted(Comparator.comparing(task -> order.indexOf(task.work().id())))
        .toList();
  }
}
