package limberboard.upkeep.shopping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Stock;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What two works, or a work and a rope, take for the same thing is got once, and no less. */
@ContentTest
class SharedUsesTest {
  private static final LocalDate BUYING = LocalDate.of(2026, 11, 25);
  private static final double DUST = 1e-6;
  private static final Workspace DEMO = read();
  private static final List<Page<Procedure>> WORK = DEMO.library().all(Procedure.class);

  private static Workspace read() {
    try {
      return new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Map<String, Double> needed(List<? extends BoughtFor> wanted, Boat boat) {
    Map<String, Double> needed = new HashMap<>();
    ShoppingList.of(wanted, new Fitting(boat, BUYING), Stock.NONE, DEMO.library())
        .lines()
        .forEach(line -> needed.put(line.material().id(), line.needed()));
    return needed;
  }

  private static Job job(String id, LocalDate day) {
    return new Job(DEMO.library().procedure(id).orElseThrow(), 1, day);
  }

  /** Pages that take in others are drawn as often as all the rest. */
  private static List<Job> jobs(List<Integer> drawn, int spread) {
    List<Page<Procedure>> linked = linked();
    List<Job> jobs = new ArrayList<>();
    for (int number : drawn) {
      List<Page<Procedure>> from = number % 2 == 0 ? linked : WORK;
      jobs.add(
          new Job(
              from.get(number / 2 % from.size()),
              1 + number % 3 / 2,
              BUYING.plusDays((long) number * 31 % (spread + 1))));
    }
    return jobs;
  }

  private static List<Page<Procedure>> linked() {
    Set<String> ids = new HashSet<>();
    for (Page<Procedure> page : WORK) {
      if (!page.details().resets().isEmpty()) {
        ids.add(page.id());
        ids.addAll(page.details().resets());
      }
    }
    return WORK.stream().filter(page -> ids.contains(page.id())).toList();
  }

  @Property(seed = "20261129", tries = 150)
  void neverMoreThanTheSumNorLessThanTheLargest(
      @ForAll @Size(min = 2, max = 12) List<@IntRange(max = 10_000) Integer> drawn,
      @ForAll @IntRange(max = 400) int spread,
      @ForAll @IntRange(max = 5) int which)
      throws IOException {
    Boat boat = DEMO.boats().get(which);
    List<Job> jobs = jobs(drawn, spread);
    Map<String, Double> together = needed(jobs, boat);
    Map<String, Double> sums = RawSums.of(Path.of("articles"), boat, jobs);
    Map<String, Double> largest = new HashMap<>();
    jobs.forEach(
        job -> needed(List.of(job), boat).forEach((id, one) -> largest.merge(id, one, Math::max)));
    assertThat(together.keySet()).isEqualTo(largest.keySet());
    sums.forEach(
        (id, sum) ->
            assertThat(together.get(id)).as(id).isLessThanOrEqualTo(sum * (1 + 1e-9) + DUST));
    largest.forEach(
        (id, one) -> assertThat(together.get(id)).as(id).isGreaterThanOrEqualTo(one - DUST));
  }

  @Property(seed = "20261129", tries = 100)
  void workThatTakesInNoOtherOnTheListIsAddedUp(
      @ForAll @Size(min = 2, max = 12) List<@IntRange(max = 10_000) Integer> drawn,
      @ForAll @IntRange(max = 5) int which)
      throws IOException {
    Boat boat = DEMO.boats().get(which);
    List<Job> jobs = new ArrayList<>(jobs(drawn, 300));
    Set<String> takenIn = new HashSet<>();
    jobs.forEach(job -> takenIn.addAll(job.work().details().resets()));
    jobs.removeIf(job -> takenIn.contains(job.work().id()));
    Map<String, Double> together = needed(jobs, boat);
    RawSums.of(Path.of("articles"), boat, jobs)
        .forEach(
            (id, sum) ->
                assertThat(together.get(id)).as(id).isCloseTo(sum, within(sum * 1e-9 + DUST)));
  }

  @Example
  void coolantThatIsLetOutForTheExchangerIsFilledInOnce() {
    Boat dunlin = DEMO.boat("dunlin").orElseThrow();
    Job descale = job("descale-heat-exchanger", BUYING);
    Job change = job("change-coolant", BUYING.plusDays(20));
    double once = needed(List.of(change), dunlin).get("coolant-premix");
    double own = needed(List.of(descale), dunlin).getOrDefault("coolant-premix", 0.0);
    assertThat(needed(List.of(descale, change), dunlin).get("coolant-premix"))
        .isCloseTo(Math.max(once, own), within(DUST));
  }

  @Example
  void inAnotherWinterItIsBoughtAnew() {
    Boat dunlin = DEMO.boat("dunlin").orElseThrow();
    Job descale = job("descale-heat-exchanger", BUYING);
    Job change = job("change-coolant", BUYING.plusYears(1));
    assertThat(needed(List.of(descale, change), dunlin).get("coolant-premix"))
        .isCloseTo(
            needed(List.of(change), dunlin).get("coolant-premix")
                + needed(List.of(descale), dunlin).getOrDefault("coolant-premix", 0.0),
            within(DUST));
  }

  @Example
  void aRopeThatDueWorkAsksForTooIsBoughtOnce() {
    for (Boat boat : DEMO.boats()) {
      RunningRigging rigging = RunningRigging.of(DEMO.library(), new Fitting(boat, BUYING));
      for (Rope rope : rigging.ropes()) {
        if (!rope.id().equals("main-halyard") || rope.material().isEmpty()) {
          continue;
        }
        String material = rope.material().get().id();
        NewRope chosen = new NewRope(rope, BUYING);
        Job work = job("renew-halyards", BUYING.plusDays(30));
        double both = needed(List.of(chosen, work), boat).getOrDefault(material, 0.0);
        double alone = needed(List.of(chosen), boat).get(material);
        double byWork = needed(List.of(work), boat).getOrDefault(material, 0.0);
        assertThat(both).as(boat.id()).isLessThanOrEqualTo(Math.max(alone, byWork) + 10);
        assertThat(both).as(boat.id()).isGreaterThanOrEqualTo(Math.max(alone, byWork) - DUST);
      }
    }
  }

  @Example
  void allRopesOfAListAreItsTotals() {
    for (Boat boat : DEMO.boats()) {
      RunningRigging rigging = RunningRigging.of(DEMO.library(), new Fitting(boat, BUYING));
      List<NewRope> all = rigging.ropes().stream().map(rope -> new NewRope(rope, BUYING)).toList();
      ShoppingList list =
          ShoppingList.of(all, new Fitting(boat, BUYING), Stock.NONE, DEMO.library());
      double metres =
          list.lines().stream().mapToDouble(ShoppingLine::needed).sum()
              + list.otherRopes().stream().mapToDouble(total -> total.metres()).sum();
      double totals = rigging.totals().stream().mapToDouble(total -> total.metres()).sum();
      assertThat(metres).as(boat.id()).isCloseTo(totals, within(DUST));
      assertThat(totals).isGreaterThan(10);
    }
  }

  /** A library in which each page takes in the next has no end that a list has to go to. */
  @Example
  void aLongChainOfWorkIsCounted() {
    Page<Procedure> last = DEMO.library().procedure("change-coolant").orElseThrow();
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 3000; i++) {
      jobs.add(new Job(chained(last, "work-" + i, "work-" + (i + 1)), 1, BUYING));
    }
    Boat dunlin = DEMO.boat("dunlin").orElseThrow();
    double once = needed(List.of(jobs.get(0)), dunlin).get("coolant-premix");
    assertThat(needed(jobs, dunlin).get("coolant-premix")).isBetween(once, once * 3000);
  }

  private static Page<Procedure> chained(Page<Procedure> like, String id, String next) {
    Procedure work = like.details();
    Procedure chained =
        new Procedure(
            work.work(),
            work.skill(),
            work.minutes(),
            work.minutesFor(),
            work.access(),
            work.tools(),
            work.materials(),
            work.cautions(),
            work.lookFor(),
            work.interval(),
            work.lookAgain(),
            List.of(next),
            work.before(),
            work.round(),
            work.appointment(),
            work.ownerParts(),
            work.workings());
    return new Page<>(id, like.path(), like.head(), chained, like.body(), like.bodyLine());
  }
}
