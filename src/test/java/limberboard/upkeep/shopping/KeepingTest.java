package limberboard.upkeep.shopping;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is in stock and how long things keep. */
class KeepingTest {
  @TempDir private Path root;
  private SmallStore store;

  @BeforeEach
  void pages() throws IOException {
    store =
        new SmallStore(root)
            .material(
                "sealant",
                "group: sealant\nunit: ml\npacks: [{name: cartridge, holds: 290 ml}]\n"
                    + "shelf-life: P1M\nopened-life: P14D")
            .job("bed", "{use: sealant, amount: 100 ml}")
            .job("look", "{use: sealant}, {use: sealant, amount: beam}");
  }

  @Test
  void oneCartridgeServesJobsWithinItsOpenedLife() throws IOException {
    ShoppingLine line = store.list("bed 2026-03-01", "bed 2026-03-15").lines().get(0);
    assertThat(line.batches()).hasSize(1);
    assertThat(line.packs()).singleElement().extracting(c -> c.count()).isEqualTo(1);
  }

  @Test
  void jobsFurtherApartAreBoughtInLots() throws IOException {
    ShoppingLine line = store.list("bed 2026-03-01", "bed 2026-03-16").lines().get(0);
    assertThat(line.batches()).hasSize(2);
    assertThat(line.needed()).isEqualTo(200);
    assertThat(line.leftOver()).contains(380.0);
    assertThat(line.remarks()).anyMatch(remark -> remark.contains("2 lots"));
  }

  /** ISO 8601 arithmetic at the month's end: a month from 28 February is 28 March. */
  @Test
  void whatWouldBeStaleIsNotBoughtBeforeItsDay() throws IOException {
    ShoppingLine line = store.list("bed 2026-05-31").lines().get(0);
    assertThat(line.batches().get(0).buyFrom()).contains(LocalDate.of(2026, 5, 1));
    ShoppingLine soon = store.list("bed 2026-04-01").lines().get(0);
    assertThat(soon.batches().get(0).buyFrom()).isEmpty();
  }

  @Test
  void theStoreIsUsedWhileItIsGood() throws IOException {
    store.stock("sealant,60 ml,2026-03-01,,\nsealant,290 ml,,2026-04-30,\n");
    ShoppingLine good = store.list("bed 2026-03-15").lines().get(0);
    assertThat(good.fromStock()).isEqualTo(100);
    assertThat(good.remarks()).isEmpty();
    assertThat(good.isToGet()).isFalse();
    ShoppingLine stale = store.list("bed 2026-03-16").lines().get(0);
    assertThat(stale.fromStock()).isEqualTo(100);
    assertThat(stale.remarks())
        .containsExactly(
            "60 ml in stock not counted: opened on 1 March 2026 it keeps until 15 March 2026,"
                + " needed on 16 March 2026");
  }

  @Test
  void whatIsNotedOfAPackIsToldWhereItIsUsedOrLeft() throws IOException {
    store.stock("sealant,60 ml,2026-03-01,,nozzle shut\nsealant,290 ml,,2026-04-30,not needed\n");
    assertThat(store.list("look 2026-03-10").lines().get(0).remarks()).isEmpty();
    store.stock(
        "sealant,60 ml,2026-03-01,,nozzle shut\nsealant,290 ml,,2026-04-30,in the locker\n");
    assertThat(store.list("bed 2026-03-15").lines().get(0).remarks())
        .containsExactly("60 ml in stock: nozzle shut", "290 ml in stock: in the locker");
    assertThat(store.list("bed 2026-03-16").lines().get(0).remarks().get(0))
        .startsWith("60 ml in stock (nozzle shut) not counted: opened on");
  }

  @Test
  void notesOfRemnantsAreToldWhereOneOfThemIsCut() throws IOException {
    store
        .material("cord", "group: cordage\nunit: m\npacks: [{name: hank, holds: 10 m}]")
        .job("lash", "{use: cord, cord: {length: 1 m}}")
        .stock("cord,3.2 m,,,what was left of the hank\n");
    ShoppingLine line = store.list("lash 2026-03-10").lines().get(0);
    assertThat(line.fromStock()).isPositive();
    assertThat(line.remarks()).containsExactly("3.2 m in stock: what was left of the hank");
  }

  @Test
  void aPrintedDateCountsToItsLastDay() throws IOException {
    store.stock("sealant,290 ml,,2026-04-30,\n");
    assertThat(store.list("bed 2026-04-30").lines().get(0).fromStock()).isEqualTo(100);
    ShoppingLine late = store.list("bed 2026-05-01").lines().get(0);
    assertThat(late.fromStock()).isZero();
    assertThat(late.remarks().get(0)).contains("its date is 30 April 2026");
  }

  @Test
  void whatIsOpenedForOneJobIsStaleForALaterOne() throws IOException {
    store.stock("sealant,290 ml,,,\n");
    ShoppingLine line = store.list("bed 2026-03-01", "bed 2026-03-20").lines().get(0);
    assertThat(line.fromStock()).isEqualTo(100);
    assertThat(line.missing()).isEqualTo(100);
  }

  @Test
  void aDayOfOpeningToComeIsQuestioned() throws IOException {
    store.stock("sealant,290 ml,2026-03-02,,\n");
    ShoppingLine line = store.list("bed 2026-03-10").lines().get(0);
    assertThat(line.fromStock()).isZero();
    assertThat(line.remarks().get(0)).contains("still to come");
  }

  @Test
  void amountsThatAreNotKnownStayVisible() throws IOException {
    ShoppingLine line = store.list("look 2026-03-10", "bed 2026-03-10").lines().get(0);
    assertThat(line.open()).hasSize(2);
    assertThat(line.needed()).isEqualTo(100);
    ShoppingLine alone = store.list("look 2026-03-10").lines().get(0);
    assertThat(alone.isToGet()).isTrue();
    assertThat(alone.batches()).isEmpty();
  }

  @Test
  void anAbsurdLifeIsNoFailure() throws IOException {
    store.material(
        "sealant", "group: sealant\nunit: ml\nshelf-life: P999999999Y\nopened-life: P2147483647M");
    store.stock("sealant,50 ml,2026-02-01,,\n");
    ShoppingLine line = store.list("bed 2026-03-10").lines().get(0);
    assertThat(line.fromStock()).isEqualTo(50);
    assertThat(line.missing()).isEqualTo(50);
  }
}
