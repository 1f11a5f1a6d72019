package limberboard.upkeep.list;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import limberboard.boat.Fitting;
import limberboard.library.problem.Problem;
import limberboard.upkeep.Task;

/**
 * Puts work that is done at one go, such as on one day, in the order of the walk, whatever its
 * phases. Immutable.
 *
 * @param fitting the boat on a day
 */
public record OneGo(Fitting fitting) {
  /** Before, between and after all stages. */
  public static final int ANY_STAGE = -1;

  /**
   * Work in order.
   *
   * @param lines the lines
   * @param bestProven as {@link ListPart#bestProven}
   */
  public record Went(List<ListLine> lines, boolean bestProven) {
    /** Copies the list. */
    public Went {
      lines = List.copyOf(lines);
    }
  }

  /**
   * What the pages say of what comes before what.
   *
   * @param earlier for each id of a page the ids of those that come before it; in no circle
   * @param problems what is wrong in the pages
   */
  public record Earlier(Map<String, Set<String>> earlier, List<Problem> problems) {
    /** Copies both. */
    public Earlier {
      earlier = Map.copyOf(earlier);
      problems = List.copyOf(problems);
    }
  }

  /** What comes before what among this work, each page of which stands there once. */
  public static Earlier earlier(List<Task> tasks) {
    Order order = new Order(tasks);
    Map<String, Set<String>> earlier = new LinkedHashMap<>();
    tasks.forEach(task -> earlier.put(task.work().id(), order.earlier(task.work().id())));
    return new Earlier(earlier, order.problems());
  }

  /**
   * The work in order. What comes before what holds, and all work of a lower stage comes before
   * that of a higher one; each access is opened once.
   *
   * @param tasks the work, each page once
   * @param stage the stage of each, or {@link #ANY_STAGE}; together with what comes before what it
   *     runs in no circle
   * @param opens whether what a piece of work needs is opened for it here, and not by others
   * @param first the number of the first line
   */
  public Went order(List<Task> tasks, ToIntFunction<Task> stage, Predicate<Task> opens, int first) {
    return tasks.isEmpty()
        ? new Went(List.of(), true)
        : new PartMaker(fitting, tasks, Task::phase, stage, opens)
            .go(first, new Order(tasks), task -> Optional.empty());
  }
}
