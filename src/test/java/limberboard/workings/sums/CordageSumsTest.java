package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static limberboard.library.value.KnownUnit.NEWTONS;
import static limberboard.library.value.KnownUnit.PIECES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cordage for a load, and turns of a lashing; the figures beneath are held in CordageTest. */
class CordageSumsTest {

  /**
   * EN 564 (from memory): accessory cord of 4, 5, 6, 7, 8 mm breaks at 3.2, 5.0, 7.2, 9.8, 12.8 kN.
   * A load of that × 0.5 × 0.75 ÷ 3 asks, knotted, for just that cord.
   */
  @ParameterizedTest
  @CsvSource({"3.2, 4", "5.0, 5", "7.2, 6", "9.8, 7", "12.8, 8"})
  void knottedAccessoryCordCarriesAnEighthOfItsStandard(double kilonewtons, double millimetres) {
    double load = kilonewtons * 1000 * 0.5 * 0.75 / 3;
    Asked asked = Asked.of(new RopeDiameter(), "load=" + load + " N");
    assertThat(asked.in(KILONEWTON, "needed")).isCloseTo(kilonewtons, within(1e-6));
    assertThat(asked.in(MILLIMETRE, "exact")).isCloseTo(millimetres, within(1e-3));
  }

  /** By hand: 2 kN × 3 ÷ (0.9 × 0.75) = 8.89 kN; √(8889 ÷ 400) = 4.71 mm; stocked 5 mm. */
  @Test
  void aSplicedHalyardAsByHand() {
    Asked asked = Asked.of(new RopeDiameter(), "load=2 kN", "rope=hmpe-core", "end=eye-splice");
    assertThat(asked.in(KILONEWTON, "needed")).isCloseTo(8.889, within(0.001));
    assertThat(asked.in(MILLIMETRE, "exact")).isCloseTo(4.714, within(0.001));
    assertThat(asked.in(MILLIMETRE, "diameter")).isCloseTo(5, within(1e-9));
    assertThat(asked.in(KILONEWTON, "breaking")).isCloseTo(10, within(1e-9));
    assertThat(asked.warnings()).isEmpty();
  }

  @Test
  void warnsOfKnotsInSlipperyRopeAndOfLoadsBeyondStock() {
    assertThat(Asked.of(new RopeDiameter(), "rope=hmpe-plain", "end=knot").warnings())
        .anyMatch(text -> text.contains("splice it"));
    assertThat(Asked.of(new RopeDiameter(), "load=40 kN").warnings())
        .anyMatch(text -> text.contains("thick enough"));
  }

  /**
   * By hand: 1.5 mm cord breaks at 0.8 × 2.25 = 1.8 kN; 2 kN × 3 ÷ (2 × 1.8 × 0.7 × 0.5 × 0.75 =
   * 0.945 kN) = 6.35, so 7 turns. Common practice, no source: six to eight turns, about a metre.
   */
  @ParameterizedTest
  @CsvSource({"2000, 7", "1890, 6", "100, 3"})
  void aLashingOfThinCord(double load, int turns) {
    Asked asked = Asked.of(new LashingTurns(), "load=" + load + " N");
    assertThat(asked.in(PIECES, "turns")).isCloseTo(turns, within(1e-9));
    assertThat(asked.in(NEWTONS, "carries")).isGreaterThanOrEqualTo(load - 1e-6);
  }

  @Test
  void manyTurnsAreWarnedOf() {
    assertThat(Asked.of(new LashingTurns(), "load=6 kN").warnings()).isNotEmpty();
  }
}
