package limberboard.boat;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.library.page.Model.Access;

/**
 * What must be opened on one boat to reach a place: each access once, in the order it is done. An
 * access that the boat's model does not know, or that is not needed on this boat, costs nothing.
 * Immutable.
 *
 * @param fitting the boat on a day
 */
public record AccessWays(Fitting fitting) {

  /**
   * What has to be done for these accesses, with all that they need first, in order.
   *
   * @param wanted access ids; ids that this boat does not need are passed over
   * @param open access ids already paid for
   */
  public List<Access> toOpen(Collection<String> wanted, Set<String> open) {
    Map<String, Access> known = new HashMap<>();
    for (Access access : fitting.boat().model().details().access()) {
      known.putIfAbsent(access.id(), access);
    }
    Map<String, Access> order = new LinkedHashMap<>();
    Set<String> met = new HashSet<>(open);
    Deque<Visit> visits = new ArrayDeque<>();
    for (String id : wanted) {
      enter(id, known, met, visits);
      while (!visits.isEmpty()) {
        Visit visit = visits.peek();
        if (visit.rest().hasNext()) {
          enter(visit.rest().next(), known, met, visits);
        } else {
          order.put(visit.access().id(), visits.pop().access());
        }
      }
    }
    return List.copyOf(order.values());
  }

  /** An access whose needs are being seen to. */
  private record Visit(Access access, Iterator<String> rest) {}

  private void enter(String id, Map<String, Access> known, Set<String> met, Deque<Visit> visits) {
    Access access = known.get(id);
    if (access != null && fitting.fits(access.fits()) && met.add(id)) {
      visits.push(new Visit(access, access.needs().iterator()));
    }
  }

  /** The minutes of {@link #toOpen}. */
  public double minutes(Collection<String> wanted, Set<String> open) {
    return toOpen(wanted, open).stream().mapToDouble(Access::minutes).sum();
  }
}
