package limberboard.upkeep.list;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import limberboard.boat.AccessWays;
import limberboard.boat.Fitting;
import limberboard.library.page.Model;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Model.Zone;
import limberboard.library.value.Phase;
import limberboard.upkeep.Task;

/** Makes one part of a list: its work in order, with what is opened and closed. */
final class PartMaker {
  private final Model model;
  private final Function<Task, Phase> phaseOf;
  private final ToIntFunction<Task> stageOf;
  private final List<Task> tasks;
  private final AccessWays ways;
  private final List<List<Access>> needed;

  PartMaker(Fitting fitting, Phase phase, List<Task> tasks) {
    this(fitting, tasks, task -> phase, task -> OneGo.ANY_STAGE, task -> true);
  }

  /**
   * Makes an order of work of several phases.
   *
   * @param phaseOf the phase in which a piece of work is done, which says what stands open
   * @param stageOf its stage: all of a lower one comes first; {@link OneGo#ANY_STAGE} for none
   * @param opens whether what it needs is opened for it here
   */
  PartMaker(
      Fitting fitting,
      List<Task> tasks,
      Function<Task, Phase> phaseOf,
      ToIntFunction<Task> stageOf,
      Predicate<Task> opens) {
    this.model = fitting.boat().model().details();
    this.tasks = tasks;
    this.phaseOf = phaseOf;
    this.stageOf = stageOf;
    this.ways = new AccessWays(fitting);
    this.needed =
        tasks.stream()
            .map(
                task ->
                    opens.test(task)
                        ? ways.toOpen(task.access(), standing(task))
                        : List.<Access>of())
            .toList();
  }

  private Set<String> standing(Task task) {
    return model.access().stream()
        .filter(access -> access.openIn().contains(phaseOf.apply(task)))
        .map(Access::id)
        .collect(Collectors.toSet());
  }

  /**
   * The part.
   *
   * @param first the number of its first line
   */
  ListPart part(int first, Order order, PartPlacement placing) {
    OneGo.Went went = go(first, order, placing::moved);
    return new ListPart(phaseOf.apply(tasks.get(0)), went.lines(), went.bestProven());
  }

  /**
   * The lines in order.
   *
   * @param first the number of the first line
   * @param moved why work stands elsewhere than in its own part
   */
  OneGo.Went go(int first, Order order, Function<Task, Optional<ListLine.Moved>> moved) {
    JobOrder found = PartSearch.order(jobs(order));
    Map<String, Integer> lastUse = new HashMap<>();
    for (int i = 0; i < found.jobs().size(); i++) {
      for (Access access : needed.get(found.jobs().get(i))) {
        lastUse.put(access.id(), i);
      }
    }
    List<ListLine> lines = new ArrayList<>();
    List<Access> open = new ArrayList<>();
    for (int i = 0; i < found.jobs().size(); i++) {
      int job = found.jobs().get(i);
      int at = i;
      List<Access> opening = needed.get(job).stream().filter(a -> !open.contains(a)).toList();
      open.addAll(opening);
      List<Access> closing = new ArrayList<>();
      open.stream().filter(a -> lastUse.get(a.id()) == at).forEach(a -> closing.add(0, a));
      Task task = tasks.get(job);
      Optional<Zone> zone = placeOf(task).map(index -> model.drawnZones().get(index));
      lines.add(new ListLine(first + i, task, zone, opening, closing, moved.apply(task)));
    }
    return new OneGo.Went(lines, found.bestProven());
  }

  private Jobs jobs(Order order) {
    Map<String, Integer> numbers = new HashMap<>();
    Map<String, Integer> accesses = new HashMap<>();
    for (int i = 0; i < tasks.size(); i++) {
      numbers.put(tasks.get(i).work().id(), i);
    }
    int[] places = new int[tasks.size()];
    int[] minutes = new int[tasks.size()];
    List<BitSet> access = new ArrayList<>();
    List<BitSet> earlier = new ArrayList<>();
    for (int i = 0; i < tasks.size(); i++) {
      Task task = tasks.get(i);
      places[i] = placeOf(task).orElse(Jobs.ANYWHERE);
      minutes[i] = task.minutes();
      BitSet open = new BitSet();
      needed.get(i).forEach(a -> open.set(numberOf(a.id(), accesses)));
      access.add(open);
      BitSet before = new BitSet();
      Set<String> here = new HashSet<>(order.earlier(task.work().id()));
      here.retainAll(numbers.keySet());
      here.forEach(id -> before.set(numbers.get(id)));
      addEarlierStages(task, before);
      earlier.add(before);
    }
    return new Jobs(places, minutes, access, earlier);
  }

  private void addEarlierStages(Task task, BitSet before) {
    int stage = stageOf.applyAsInt(task);
    for (int i = 0; i < tasks.size() && stage != OneGo.ANY_STAGE; i++) {
      int other = stageOf.applyAsInt(tasks.get(i));
      if (other != OneGo.ANY_STAGE && other < stage) {
        before.set(i);
      }
    }
  }

  private static int numberOf(String id, Map<String, Integer> numbers) {
    numbers.putIfAbsent(id, numbers.size());
    return numbers.get(id);
  }

  /** The first of the page's zones that this model has: its main place. */
  private Optional<Integer> placeOf(Task task) {
    List<String> walk = model.drawnZones().stream().map(Zone::id).toList();
    return task.work().head().zones().stream().map(walk::indexOf).filter(at -> at >= 0).findFirst();
  }
}
