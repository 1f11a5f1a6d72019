package limberboard.upkeep.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import limberboard.upkeep.list.PartState.Cost;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Orders of work against every order there is, whose cost is worked out in another way. */
class PartSearchTest {

  @Property(seed = "20261125", tries = 400)
  void isTheBestOfAllOrders(@ForAll @IntRange(min = 1, max = 8) int size, @ForAll int seed) {
    Jobs jobs = random(size, 3, 0.15, new Random(seed));
    JobOrder found = PartSearch.order(jobs);
    Cost best = new Every(jobs).best();
    assertThat(new Cost(found.idle(), found.walk())).isEqualTo(best).isEqualTo(cost(found, jobs));
    assertThat(found.bestProven()).isTrue();
    keeps(found, jobs);
  }

  @Property(seed = "20261125", tries = 60)
  void largePartsKeepEverythingThatMustBeKept(
      @ForAll @IntRange(min = 9, max = 80) int size, @ForAll int seed) {
    Jobs jobs = random(size, 10, 2.0 / size, new Random(seed));
    JobOrder found = PartSearch.order(jobs);
    keeps(found, jobs);
    assertThat(new Cost(found.idle(), found.walk())).isEqualTo(cost(found, jobs));
    assertThat(found.walk()).isGreaterThanOrEqualTo(jobs.leastWalk(0, new BitSet()));
  }

  @Test
  void aThousandJobsAreOrderedAndKeepWhatMustBeKept() {
    Jobs jobs = random(1_200, 10, 0.002, new Random(7));
    JobOrder found = PartSearch.order(jobs);
    keeps(found, jobs);
    assertThat(found.bestProven()).isFalse();
    assertThat(new Cost(found.idle(), found.walk())).isEqualTo(cost(found, jobs));
  }

  @Test
  void withoutAccessAndOrderOneWalksTheBoatOnceFromTheFirstZone() {
    Jobs jobs = jobs(new int[] {7, 2, 9, 2, 0}, List.of(), List.of());
    JobOrder found = PartSearch.order(jobs);
    assertThat(found.jobs()).containsExactly(4, 1, 3, 0, 2);
    assertThat(found.walk()).isEqualTo(9);
    assertThat(found.bestProven()).isTrue();
  }

  @Test
  void workUnderTheSameBoardsIsDoneWhileTheyAreUpAlthoughOneWalksFurther() {
    Jobs jobs = jobs(new int[] {1, 3, 5}, List.of(new int[] {0, 0}, new int[] {2, 0}), List.of());
    JobOrder found = PartSearch.order(jobs);
    assertThat(found.idle()).isZero();
    assertThat(found.jobs()).containsExactly(0, 2, 1);
    assertThat(found.walk()).isEqualTo(1 + 4 + 2);
  }

  @Test
  void accessStaysOpenWhereTheOrderOfWorkWantsIt() {
    Jobs jobs =
        jobs(
            new int[] {1, 1, 1},
            List.of(new int[] {0, 0}, new int[] {2, 0}),
            List.of(new int[] {0, 1}, new int[] {1, 2}));
    JobOrder found = PartSearch.order(jobs);
    assertThat(found.jobs()).containsExactly(0, 1, 2);
    assertThat(found.idle()).isEqualTo(11);
  }

  @Test
  void workWithoutAPlaceCostsNoWalk() {
    JobOrder found = PartSearch.order(jobs(new int[] {4, Jobs.ANYWHERE, 6}, List.of(), List.of()));
    assertThat(found.walk()).isEqualTo(6);
    assertThat(found.jobs()).hasSize(3);
  }

  @Test
  void nothingToDoIsNoOrder() {
    assertThat(PartSearch.order(jobs(new int[0], List.of(), List.of())).jobs()).isEmpty();
  }

  /** Jobs of 10, 11, 12 … minutes; access and order as pairs. */
  private static Jobs jobs(int[] places, List<int[]> access, List<int[]> before) {
    int size = places.length;
    List<BitSet> needed = sets(size);
    List<BitSet> earlier = sets(size);
    access.forEach(pair -> needed.get(pair[0]).set(pair[1]));
    before.forEach(pair -> earlier.get(pair[1]).set(pair[0]));
    return new Jobs(places, IntStream.range(10, 10 + size).toArray(), needed, earlier);
  }

  private static List<BitSet> sets(int size) {
    return IntStream.range(0, size).mapToObj(i -> new BitSet()).toList();
  }

  /** Random jobs; what comes before what follows a random line-up, so that it has no circle. */
  private static Jobs random(int size, int accesses, double ordered, Random random) {
    int[] places = new int[size];
    int[] minutes = new int[size];
    List<BitSet> access = sets(size);
    List<BitSet> earlier = sets(size);
    List<Integer> lineUp = new ArrayList<>(IntStream.range(0, size).boxed().toList());
    java.util.Collections.shuffle(lineUp, random);
    for (int i = 0; i < size; i++) {
      places[i] = random.nextInt(8) - 1;
      minutes[i] = 1 + random.nextInt(60);
      for (int a = 0; a < accesses; a++) {
        access.get(i).set(a, random.nextDouble() < 1.2 / accesses);
      }
      for (int j = 0; j < i; j++) {
        earlier.get(lineUp.get(i)).set(lineUp.get(j), random.nextDouble() < ordered);
      }
    }
    return new Jobs(places, minutes, access, earlier);
  }

  private static void keeps(JobOrder found, Jobs jobs) {
    assertThat(found.jobs())
        .containsExactlyInAnyOrderElementsOf(IntStream.range(0, jobs.size()).boxed().toList());
    for (int job = 0; job < jobs.size(); job++) {
      int at = found.jobs().indexOf(job);
      assertThat(jobs.earlier().get(job).stream())
          .allMatch(before -> found.jobs().indexOf(before) < at);
    }
  }

  private static Cost cost(JobOrder found, Jobs jobs) {
    return cost(found.jobs(), jobs);
  }

  /** What an order costs, from the first and last use of each access. */
  private static Cost cost(List<Integer> order, Jobs jobs) {
    long idle = 0;
    for (int access = 0; access < 10; access++) {
      int each = access;
      List<Integer> users =
          IntStream.range(0, order.size())
              .filter(i -> jobs.access().get(order.get(i)).get(each))
              .boxed()
              .toList();
      for (int i = users.isEmpty() ? 0 : users.get(0);
          !users.isEmpty() && i < users.get(users.size() - 1);
          i++) {
        idle += users.contains(i) ? 0 : jobs.minutes()[order.get(i)];
      }
    }
    int at = 0;
    long walk = 0;
    for (int job : order) {
      int place = jobs.places()[job];
      if (place >= 0) {
        walk += Math.abs(place - at);
        at = place;
      }
    }
    return new Cost(idle, walk);
  }

  /** Tries every order that keeps what comes first. */
  private static final class Every {
    private final Jobs jobs;
    private final List<Integer> order = new ArrayList<>();
    private Cost best = new Cost(Long.MAX_VALUE, 0);

    Every(Jobs jobs) {
      this.jobs = jobs;
    }

    Cost best() {
      if (order.size() == jobs.size()) {
        Cost cost = cost(order, jobs);
        best = cost.compareTo(best) < 0 ? cost : best;
        return best;
      }
      for (int job = 0; job < jobs.size(); job++) {
        if (!order.contains(job) && jobs.earlier().get(job).stream().allMatch(order::contains)) {
          order.add(job);
          best();
          order.remove(order.size() - 1);
        }
      }
      return best;
    }
  }
}
