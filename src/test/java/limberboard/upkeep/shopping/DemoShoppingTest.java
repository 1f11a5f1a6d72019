package limberboard.upkeep.shopping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Stock;
import limberboard.boat.StockItem;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Material.Pack;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.workings.Purchase.Counted;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Shopping lists of the demo boats, held against sums made from the files by another way. */
@ContentTest
class DemoShoppingTest {
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

  @org.junit.jupiter.api.Test
  void totalsOfWorkThatTakesInNoOtherAreTheSumsOfTheRawHeaders() throws IOException {
    List<Page<Procedure>> work =
        WORK.stream().filter(page -> page.details().resets().isEmpty()).toList();
    assertThat(work).hasSizeGreaterThan(WORK.size() * 3 / 4);
    for (Boat boat : DEMO.boats()) {
      List<Job> jobs = new ArrayList<>();
      for (int i = 0; i < work.size(); i++) {
        jobs.add(new Job(work.get(i), 1 + i % 3, BUYING.plusDays(7L * (i % 20))));
      }
      ShoppingList list = list(jobs, boat, DEMO.stock(boat));
      Map<String, Double> sums = RawSums.of(Path.of("articles"), boat, jobs);
      Map<String, Double> ours = new HashMap<>();
      list.lines().stream()
          .filter(line -> line.uses().stream().anyMatch(Usage::isReckoned))
          .forEach(line -> ours.put(line.material().id(), line.needed()));
      assertThat(ours.keySet()).as(boat.name()).isEqualTo(sums.keySet());
      assertThat(sums).hasSizeGreaterThan(30);
      sums.forEach(
          (material, sum) ->
              assertThat(ours.get(material))
                  .as(boat.name() + " " + material)
                  .isCloseTo(sum, within(sum * 1e-9 + DUST)));
    }
  }

  @Property(seed = "20261125", tries = 40)
  void packsCoverWhatTheStoreDoesNotHave(
      @ForAll @Size(min = 1, max = 25) List<@IntRange(max = 10_000) Integer> work,
      @ForAll @IntRange(max = 700) int spread,
      @ForAll @IntRange(max = 5) int which) {
    Boat boat = DEMO.boats().get(which);
    for (ShoppingLine line : list(jobs(work, spread), boat, DEMO.stock(boat)).lines()) {
      double packs = held(line);
      double tooLong = line.tooLong().stream().mapToDouble(Double::doubleValue).sum();
      if (line.material().details().isBought() && !line.material().details().packs().isEmpty()) {
        assertThat(line.fromStock() + packs + tooLong)
            .as(line.material().id())
            .isGreaterThanOrEqualTo(line.needed() - DUST);
        assertThat(packs - line.leftOver().orElse(0.0))
            .as(line.material().id())
            .isCloseTo(line.missing() - tooLong, within(DUST));
      }
      assertThat(line.fromStock()).isLessThanOrEqualTo(line.needed() + DUST);
    }
  }

  @Property(seed = "20261125", tries = 40)
  void havingSomethingNeverMakesTheListLonger(
      @ForAll @Size(min = 1, max = 25) List<@IntRange(max = 10_000) Integer> work,
      @ForAll @IntRange(max = 700) int spread,
      @ForAll @IntRange(max = 5) int which) {
    Boat boat = DEMO.boats().get(which);
    List<StockItem> everything = new ArrayList<>();
    DEMO.boats().forEach(other -> everything.addAll(DEMO.stock(other).items()));
    List<Job> jobs = jobs(work, spread);
    ShoppingList without = list(jobs, boat, Stock.NONE);
    ShoppingList with = list(jobs, boat, new Stock(everything));
    assertThat(with.lines()).hasSameSizeAs(without.lines());
    assertThat(with.toGet().size()).isLessThanOrEqualTo(without.toGet().size());
    for (int i = 0; i < with.lines().size(); i++) {
      assertThat(held(with.lines().get(i)))
          .as(with.lines().get(i).material().id())
          .isLessThanOrEqualTo(held(without.lines().get(i)) + DUST);
    }
  }

  private static double held(ShoppingLine line) {
    double held = 0;
    for (Counted counted : line.packs()) {
      held += counted.count() * RawSums.counted(holds(counted.pack()));
    }
    return held;
  }

  private static String holds(Pack pack) {
    return limberboard.workings.QuantityWords.METRIC.written(pack.holds().quantity());
  }

  private static List<Job> jobs(List<Integer> work, int spread) {
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < work.size(); i++) {
      int number = work.get(i);
      jobs.add(
          new Job(
              WORK.get(number % WORK.size()),
              1 + number % 2,
              BUYING.plusDays((long) number * 31 % (spread + 1))));
    }
    return jobs;
  }

  private static ShoppingList list(List<Job> jobs, Boat boat, Stock stock) {
    return ShoppingList.of(jobs, new Fitting(boat, BUYING), stock, DEMO.library());
  }
}
