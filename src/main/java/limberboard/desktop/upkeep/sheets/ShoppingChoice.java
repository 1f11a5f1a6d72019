package limberboard.desktop.upkeep.sheets;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import limberboard.desktop.upkeep.state.AskedRope;
import limberboard.upkeep.plan.PlanJobs;
import limberboard.upkeep.plan.WorkPlan;
import limberboard.upkeep.shopping.Job;

/**
 * What is shopped for. Immutable.
 *
 * @param season the year in which the season begins; empty for this or the coming one
 * @param left work that is not shopped for, by boat and season
 * @param only the only work that is shopped for, by boat, where that was asked
 * @param plans the plan that is shopped for, by boat, where it is for one; the work of it that is
 *     shopped for is in {@code only}
 * @param ropes ropes that were asked for, by boat
 */
record ShoppingChoice(
    Optional<Integer> season,
    Map<String, Set<String>> left,
    Map<String, Set<String>> only,
    Map<String, WorkPlan> plans,
    Map<String, Ropes> ropes) {
  /** Copies the maps. */
  ShoppingChoice {
    left = Map.copyOf(left);
    only = Map.copyOf(only);
    plans = Map.copyOf(plans);
    ropes = Map.copyOf(ropes);
  }

  /**
   * Ropes of one boat.
   *
   * @param asked those that were asked for, in the order of her list
   * @param left ids of those of them that are not shopped for after all
   */
  record Ropes(List<AskedRope> asked, Set<String> left) {
    private static final Ropes NONE = new Ropes(List.of(), Set.of());

    /** Copies the list and the set. */
    Ropes {
      asked = List.copyOf(asked);
      left = Set.copyOf(left);
    }

    boolean asksFor(String id) {
      return asked.stream().anyMatch(rope -> rope.id().equals(id));
    }

    boolean shopsFor(String id) {
      return asksFor(id) && !left.contains(id);
    }

    Ropes taking(String id, boolean wanted) {
      Set<String> other = new TreeSet<>(left);
      if (wanted) {
        other.remove(id);
      } else {
        other.add(id);
      }
      return new Ropes(asked, other);
    }
  }

  /** All work of this or the coming season, and no rope. */
  static ShoppingChoice first() {
    return new ShoppingChoice(Optional.empty(), Map.of(), Map.of(), Map.of(), Map.of());
  }

  Set<String> left(String boat, int year) {
    return left.getOrDefault(boat + " " + year, Set.of());
  }

  boolean shopsFor(String boat, int year, String work) {
    return only.containsKey(boat)
        ? only.get(boat).contains(work)
        : !left(boat, year).contains(work);
  }

  Ropes ropes(String boat) {
    return ropes.getOrDefault(boat, Ropes.NONE);
  }

  /** The only work that is shopped for; none where that was not asked. */
  Set<String> only(String boat) {
    return only.getOrDefault(boat, Set.of());
  }

  /** The plan that is shopped for; empty when it is not for a plan. */
  Optional<WorkPlan> plan(String boat) {
    return Optional.ofNullable(plans.get(boat));
  }

  /** Only this work, or no more only some; for no plan. */
  ShoppingChoice only(String boat, Optional<Set<String>> works) {
    Map<String, Set<String>> other = new TreeMap<>(only);
    works.ifPresentOrElse(ids -> other.put(boat, Set.copyOf(ids)), () -> other.remove(boat));
    Map<String, WorkPlan> without = new TreeMap<>(plans);
    without.remove(boat);
    return new ShoppingChoice(season, left, other, without, ropes);
  }

  /** Only this work, of the plan if it is for one. */
  ShoppingChoice within(String boat, Set<String> works) {
    Map<String, Set<String>> other = new TreeMap<>(only);
    other.put(boat, Set.copyOf(works));
    return new ShoppingChoice(season, left, other, plans, ropes);
  }

  /** All work of a plan and nothing else. */
  ShoppingChoice plan(String boat, WorkPlan plan) {
    Map<String, WorkPlan> other = new TreeMap<>(plans);
    other.put(boat, plan);
    Set<String> works = PlanJobs.of(plan).stream().map(Job::id).collect(Collectors.toSet());
    return new ShoppingChoice(season, left, only, other, ropes).within(boat, works);
  }

  ShoppingChoice leaving(String boat, int year, Set<String> works) {
    Map<String, Set<String>> other = new TreeMap<>(left);
    other.put(boat + " " + year, Set.copyOf(works));
    return new ShoppingChoice(season, other, only, plans, ropes);
  }

  ShoppingChoice ropes(String boat, Ropes wanted) {
    Map<String, Ropes> other = new TreeMap<>(ropes);
    other.put(boat, wanted);
    return new ShoppingChoice(season, left, only, plans, other);
  }

  ShoppingChoice in(int year) {
    return new ShoppingChoice(Optional.of(year), left, only, plans, ropes);
  }
}
