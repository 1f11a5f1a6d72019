package limberboard.upkeep.shopping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import limberboard.library.page.Material.Pack;
import limberboard.library.value.Amount;
import limberboard.library.value.KnownUnit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Pieces are cut from remnants, reels and lengths. */
class CuttingPlansTest {
  private static final long DECIMETRE = 1000;

  @Test
  void aRemnantOfThreeMetresCannotServeAPieceOfFour() {
    CuttingPlan plan = new CuttingPlans(List.of(reel(10))).plan(List.of(4.0), List.of(3.0));
    assertThat(plan.fromStock()).isZero();
    assertThat(plan.purchase().orElseThrow().count()).isEqualTo(1);
    assertThat(plan.cuts()).singleElement().extracting(Cut::length).isEqualTo(10.0);
  }

  @Test
  void threePiecesOfFourMetresDoNotComeFromTwelveMetresInRemnantsOfSix() {
    CuttingPlan plan =
        new CuttingPlans(List.of(reel(5))).plan(List.of(4.0, 4.0, 4.0), List.of(6.0, 6.0));
    assertThat(plan.fromStock()).isEqualTo(8.0);
    assertThat(plan.purchase().orElseThrow().leftOver()).isCloseTo(1, within(1e-9));
  }

  @Test
  void whatIsCutToLengthIsBoughtInOneLength() {
    CuttingPlan plan = new CuttingPlans(List.of(metre())).plan(List.of(2.3, 1.1), List.of());
    assertThat(plan.cuts()).singleElement().extracting(Cut::length).isEqualTo(4.0);
    assertThat(plan.purchase().orElseThrow().count()).isEqualTo(4);
  }

  @Test
  void aPieceLongerThanEveryReelIsNamed() {
    CuttingPlan plan = new CuttingPlans(List.of(reel(10))).plan(List.of(12.0, 3.0), List.of(2.0));
    assertThat(plan.tooLong()).containsExactly(12.0);
    assertThat(plan.cuts()).singleElement().extracting(Cut::pieces).isEqualTo(List.of(3.0));
  }

  @Test
  void withoutAPackNothingIsInvented() {
    CuttingPlan plan = new CuttingPlans(List.of()).plan(List.of(2.0), List.of());
    assertThat(plan.tooLong()).containsExactly(2.0);
    assertThat(plan.purchase()).isEmpty();
  }

  /** Two full lengths: 4 + 3 + 3 twice; beginning 4 + 4 wastes 2 m and takes a third. */
  @Test
  void theLongestFirstIsNotAlwaysBest() {
    List<Double> pieces = List.of(4.0, 4.0, 3.0, 3.0, 3.0, 3.0);
    CuttingPlan plan = new CuttingPlans(List.of(reel(10))).plan(pieces, List.of());
    assertThat(plan.purchase().orElseThrow().count()).isEqualTo(2);
  }

  @Property(seed = "20261125", tries = 300)
  void smallCasesCannotBeDoneWithLess(
      @ForAll @Size(min = 1, max = 5) List<@IntRange(min = 1, max = 60) Integer> decimetres,
      @ForAll @Size(max = 2) List<@IntRange(min = 1, max = 50) Integer> remnants,
      @ForAll @IntRange(min = 60, max = 90) int reel,
      @ForAll @IntRange(min = 20, max = 59) int shorter,
      @ForAll boolean toLength) {
    List<Pack> packs = new ArrayList<>(List.of(reel(reel / 10.0), reel(shorter / 10.0)));
    if (toLength) {
      packs.add(metre());
    }
    CuttingPlan plan = new CuttingPlans(packs).plan(metres(decimetres), metres(remnants));
    EveryCut every =
        new EveryCut(
            longs(decimetres),
            longs(remnants),
            new long[] {reel * DECIMETRE, shorter * DECIMETRE},
            toLength ? 10 * DECIMETRE : 0);
    assertThat(Lengths.needed(bought(plan))).isEqualTo(every.least());
  }

  @Property(seed = "20261125", tries = 300)
  void everyPieceIsCutWholeAndOnce(
      @ForAll @Size(min = 1, max = 90) List<@IntRange(min = 1, max = 120) Integer> decimetres,
      @ForAll @Size(max = 6) List<@IntRange(min = 1, max = 80) Integer> remnants,
      @ForAll @IntRange(min = 50, max = 200) int reel) {
    CuttingPlan plan =
        new CuttingPlans(List.of(reel(reel / 10.0))).plan(metres(decimetres), metres(remnants));
    List<Double> cut = new ArrayList<>(plan.tooLong());
    for (Cut each : plan.cuts()) {
      assertThat(each.used()).isLessThanOrEqualTo(each.length() + 1e-9);
      cut.addAll(each.pieces());
    }
    assertThat(cut).containsExactlyInAnyOrderElementsOf(metres(decimetres));
    List<Double> used = new ArrayList<>();
    plan.cuts().stream().filter(Cut::isRemnant).map(Cut::length).forEach(used::add);
    List<Double> there = new ArrayList<>(metres(remnants));
    used.forEach(length -> assertThat(there.remove(length)).isTrue());
  }

  @Property(seed = "20261125", tries = 200)
  void remnantsNeverMakeBuyingDearer(
      @ForAll @Size(min = 1, max = 60) List<@IntRange(min = 1, max = 100) Integer> decimetres,
      @ForAll @Size(max = 8) List<@IntRange(min = 1, max = 90) Integer> remnants,
      @ForAll @IntRange(min = 100, max = 200) int reel) {
    CuttingPlans cutting = new CuttingPlans(List.of(reel(reel / 10.0)));
    double with = bought(cutting.plan(metres(decimetres), metres(remnants)));
    double without = bought(cutting.plan(metres(decimetres), List.of()));
    assertThat(with).isLessThanOrEqualTo(without + 1e-9);
  }

  private static double bought(CuttingPlan plan) {
    return plan.cuts().stream().filter(cut -> !cut.isRemnant()).mapToDouble(Cut::length).sum();
  }

  private static List<Double> metres(List<Integer> decimetres) {
    return decimetres.stream().map(length -> length / 10.0).toList();
  }

  private static long[] longs(List<Integer> decimetres) {
    return decimetres.stream().mapToLong(length -> length * DECIMETRE).toArray();
  }

  private static Pack reel(double metres) {
    return new Pack("reel", new Amount.Fixed(KnownUnit.METRES.quantity(metres)));
  }

  private static Pack metre() {
    return new Pack("by the metre", new Amount.Fixed(KnownUnit.METRES.quantity(1)), true);
  }
}
