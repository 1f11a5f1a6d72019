package limberboard.upkeep.list;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the order of one part's jobs. It goes first where it is cheapest to go next, which alone
 * gives an order of any number of jobs, and then looks for a better one: from each {@link
 * PartState} every place one could go to next is tried, stands are taken by how much is done, and
 * of each number only so many of the cheapest are kept. Passes keep more and more; a pass that had
 * to drop none, or an order that costs no more than any must, is proven to be the best. For one
 * part, on one thread.
 *
 * <p>The time of a pass grows with the jobs, the places to go to and the stands kept; a part of few
 * jobs is always searched to the end. Of a part of many jobs no more than {@value #MOST_STEPS}
 * stands times jobs are looked at, so that a list of a thousand jobs is there in seconds, and the
 * best order found until then is taken.
 */
final class PartSearch {
  private static final int[] KEPT = {4, 32, 128};
  private static final int[] KEPT_OF_FEW = {4, 32, 128, 100_000};
  private static final int FEW = 10;
  private static final int MANY = 60;
  private static final long MOST_STEPS = 10_000_000;

  private final Jobs jobs;
  private Optional<PartState> best = Optional.empty();
  private boolean droppedAny;
  private long steps;

  private PartSearch(Jobs jobs) {
    this.jobs = jobs;
  }

  /** The best order found. */
  static JobOrder order(Jobs jobs) {
    return new PartSearch(jobs).search();
  }

  private JobOrder search() {
    PartState beginning = PartState.beginning(jobs);
    if (jobs.size() == 0) {
      return new JobOrder(List.of(), 0, 0, true);
    }
    boolean proven = false;
    if (jobs.size() > MANY) {
      best = Optional.of(straightOn(beginning));
      proven = isLeast(beginning);
    }
    for (int kept : jobs.size() <= FEW ? KEPT_OF_FEW : KEPT) {
      if (proven || isTired()) {
        break;
      }
      pass(beginning, kept);
      proven = !droppedAny || isLeast(beginning);
    }
    PartState end = best.orElseThrow();
    return new JobOrder(
        Arrays.stream(end.inOrder()).boxed().toList(), end.idle(), end.walk(), proven);
  }

  private boolean isLeast(PartState beginning) {
    return best.orElseThrow().least().equals(beginning.least());
  }

  /** Whether so much was looked at that the best order found has to do. */
  private boolean isTired() {
    return jobs.size() > MANY && steps >= MOST_STEPS;
  }

  /** Goes each time where it costs least to go next; in place of several the first as given. */
  private PartState straightOn(PartState beginning) {
    PartState stand = beginning;
    while (stand.done().cardinality() < jobs.size()) {
      BitSet open = jobs.open(stand.done());
      int next = -1;
      PartState.Cost least = new PartState.Cost(Long.MAX_VALUE, Long.MAX_VALUE);
      for (int job = 0; job < jobs.size(); job++) {
        if (jobs.isFree(job, stand.done())) {
          PartState.Cost cost =
              new PartState.Cost(jobs.idle(job, open), jobs.walk(stand.at(), job));
          if (cost.compareTo(least) < 0) {
            least = cost;
            next = job;
          }
        }
      }
      stand = stand.go(next, jobs);
    }
    return stand;
  }

  private void pass(PartState beginning, int kept) {
    droppedAny = false;
    List<Map<PartState.Key, PartState>> byDone = new ArrayList<>();
    for (int i = 0; i <= jobs.size(); i++) {
      byDone.add(new LinkedHashMap<>());
    }
    byDone.get(0).put(beginning.key(), beginning);
    for (int i = 0; i < jobs.size(); i++) {
      for (PartState stand : cheapest(byDone.get(i), kept)) {
        if (isTired()) {
          droppedAny = true;
          return;
        }
        for (PartState next : onwards(stand)) {
          byDone.get(next.done().cardinality()).merge(next.key(), next, PartSearch::cheaper);
        }
      }
      byDone.get(i).clear();
    }
    for (PartState end : byDone.get(jobs.size()).values()) {
      best = Optional.of(best.map(known -> cheaper(known, end)).orElse(end));
    }
  }

  /** The cheaper of two; of equally cheap ones that whose work comes first as it was given. */
  private static PartState cheaper(PartState first, PartState second) {
    int difference = second.least().compareTo(first.least());
    if (difference == 0) {
      difference = Arrays.compare(second.inOrder(), first.inOrder());
    }
    return difference < 0 ? second : first;
  }

  private List<PartState> cheapest(Map<PartState.Key, PartState> stands, int kept) {
    List<PartState> worth =
        stands.values().stream()
            .filter(this::mayBeBetter)
            .sorted(Comparator.comparing(PartState::least))
            .toList();
    if (worth.size() > kept) {
      droppedAny = true;
      return worth.subList(0, kept);
    }
    return worth;
  }

  private boolean mayBeBetter(PartState stand) {
    return best.isEmpty() || stand.least().compareTo(best.get().least()) < 0;
  }

  /**
   * What can be done next; of free work in one place that needs the same, one piece stands for all.
   */
  private List<PartState> onwards(PartState stand) {
    List<PartState> next = new ArrayList<>();
    Set<Alike> tried = new LinkedHashSet<>();
    BitSet open = jobs.open(stand.done());
    for (int job = 0; job < jobs.size(); job++) {
      if (jobs.isFree(job, stand.done())) {
        boolean free = jobs.idle(job, open) == 0;
        if (!free || tried.add(new Alike(jobs.places()[job], jobs.access().get(job)))) {
          steps += jobs.size();
          PartState there = stand.go(job, jobs);
          if (mayBeBetter(there)) {
            next.add(there);
          }
        }
      }
    }
    return next;
  }

  /** Jobs that are alike for the walk. */
  private record Alike(int place, BitSet access) {}
}
