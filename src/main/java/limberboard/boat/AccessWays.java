package limberboard.boat;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.library.Model.Access;

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
    Map<String, Access> order = new LinkedHashMap<>();
    Set<String> visiting = new LinkedHashSet<>();
    wanted.forEach(id -> visit(id, open, order, visiting));
    return List.copyOf(order.values());
  }

  /** The minutes of {@link #toOpen}. */
  public double minutes(Collection<String> wanted, Set<String> open) {
    return toOpen(wanted, open).stream().mapToDouble(Access::minutes).sum();
  }

  private void visit(String id, Set<String> open, Map<String, Access> order, Set<String> visiting) {
    Optional<Access> access = fitting.boat().model().details().access(id);
    if (access.isEmpty()
        || open.contains(id)
        || order.containsKey(id)
        || !fitting.fits(access.get().fits())
        || !visiting.add(id)) {
      return;
    }
    access.get().needs().forEach(need -> visit(need, open, order, visiting));
    visiting.remove(id);
    order.put(id, access.get());
  }
}
