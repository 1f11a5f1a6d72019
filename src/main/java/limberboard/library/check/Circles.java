package limberboard.library.check;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds what runs in a circle: sets of ids that each lead, over one another, back to themselves.
 * Time grows with the number of ids and references (R. Tarjan, Depth-First Search and Linear Graph
 * Algorithms, SIAM J. Comput. 1(2), 1972), and nothing is recursive. For one call, on one thread.
 */
public final class Circles {
  private final Map<String, ? extends Collection<String>> leads;
  private final Map<String, Integer> number = new HashMap<>();
  private final Map<String, Integer> lowest = new HashMap<>();
  private final Deque<String> path = new ArrayDeque<>();
  private final TreeSet<String> onPath = new TreeSet<>();
  private final SortedMap<String, SortedSet<String>> found = new TreeMap<>();

  private record Visit(String id, Iterator<String> rest) {}

  private Circles(Map<String, ? extends Collection<String>> leads) {
    this.leads = leads;
  }

  /**
   * The sets of two or more ids that run in a circle, each in order, by their first id. An id that
   * only leads to itself is not among them.
   *
   * @param leads id to the ids that it leads to; ids that are no key lead nowhere
   */
  public static List<SortedSet<String>> of(Map<String, ? extends Collection<String>> leads) {
    Circles circles = new Circles(leads);
    leads.keySet().stream().sorted().forEach(circles::from);
    return List.copyOf(circles.found.values());
  }

  /**
   * The shortest way from an id over others back to itself, the id at both ends; empty when there
   * is none.
   *
   * @param within the ids that it may lead over
   */
  public static List<String> way(
      String start, Collection<String> within, Map<String, ? extends Collection<String>> leads) {
    Map<String, String> cameFrom = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      String at = open.removeFirst();
      for (String next : leadsFrom(leads, at)) {
        if (next.equals(start) && !at.equals(start)) {
          return back(start, at, cameFrom);
        }
        if (within.contains(next) && !next.equals(start) && !cameFrom.containsKey(next)) {
          cameFrom.put(next, at);
          open.addLast(next);
        }
      }
    }
    return List.of();
  }

  private static List<String> back(String start, String last, Map<String, String> cameFrom) {
    Deque<String> way = new ArrayDeque<>(List.of(start));
    for (String at = last; !at.equals(start); at = cameFrom.get(at)) {
      way.addFirst(at);
    }
    way.addFirst(start);
    return List.copyOf(way);
  }

  private static Collection<String> leadsFrom(
      Map<String, ? extends Collection<String>> leads, String id) {
    Collection<String> to = leads.get(id);
    return to == null ? List.of() : to;
  }

  private void from(String start) {
    if (number.containsKey(start)) {
      return;
    }
    Deque<Visit> visits = new ArrayDeque<>(List.of(enter(start)));
    while (!visits.isEmpty()) {
      Visit visit = visits.peek();
      if (!visit.rest().hasNext()) {
        visits.pop();
        leave(visit.id());
        if (!visits.isEmpty()) {
          lower(visits.peek().id(), lowest.get(visit.id()));
        }
        continue;
      }
      String next = visit.rest().next();
      if (!number.containsKey(next)) {
        visits.push(enter(next));
      } else if (onPath.contains(next)) {
        lower(visit.id(), number.get(next));
      }
    }
  }

  private Visit enter(String id) {
    number.put(id, number.size());
    lowest.put(id, number.get(id));
    path.push(id);
    onPath.add(id);
    return new Visit(id, new ArrayList<>(leadsFrom(leads, id)).iterator());
  }

  private void lower(String id, int to) {
    lowest.merge(id, to, Math::min);
  }

  private void leave(String id) {
    if (!lowest.get(id).equals(number.get(id))) {
      return;
    }
    SortedSet<String> together = new TreeSet<>();
    while (!together.contains(id)) {
      String last = path.pop();
      onPath.remove(last);
      together.add(last);
    }
    if (together.size() > 1) {
      found.put(together.first(), together);
    }
  }
}
