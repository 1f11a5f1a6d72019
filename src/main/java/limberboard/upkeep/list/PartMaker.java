package limberboard.upkeep.list;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
  private final Phase phase;
  private final List<Task> tasks;
  private final AccessWays ways;
  private final Set<String> standing;
  private final List<List<Access>> needed;

  PartMaker(Fitting fitting, Phase phase, List<Task> tasks) {
    this.model = fitting.boat().model().details();
    this.phase = phase;
    this.tasks = tasks;
    this.ways = new AccessWays(fitting);
    this.standing =
        model.access().stream()
            .filter(access -> access.openIn().contains(phase))
            .map(Access::id)
            .collect(Collectors.toSet());
    this.needed = tasks.stream().map(task -> ways.toOpen(task.access(), standing)).toList();
  }

  /**
   * The part.
   *
   * @param first the number of its first line
   */
  ListPart part(int first, Order order, PartPlacement placing) {
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
      lines.add(line(first + i, tasks.get(job), opening, closing, placing));
    }
    return new ListPart(phase, lines, found.bestProven());
  }

  private ListLine line(
      int number, Task task, List<Access> opening, List<Access> closing, PartPlacement placing) {
    Optional<Zone> zone = placeOf(task).map(index -> model.drawnZones().get(index));
    return new ListLine(number, task, zone, opening, closing, placing.moved(task));
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
      earlier.add(before);
    }
    return new Jobs(places, minutes, access, earlier);
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
