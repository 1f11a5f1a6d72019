package limberboard.upkeep.list;

import java.util.List;

/**
 * The jobs of a part in order.
 *
 * @param jobs all jobs, each once
 * @param idle minutes for which accesses stand open during work that does not need them
 * @param walk length of the walk in zones, from the first zone of the boat
 * @param bestProven whether no order with less idle, or the same and less walk, exists
 */
record JobOrder(List<Integer> jobs, long idle, long walk, boolean bestProven) {
  JobOrder {
    jobs = List.copyOf(jobs);
  }
}
