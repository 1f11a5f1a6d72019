package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.SQUARE_MILLIMETRE;
import static limberboard.library.value.KnownUnit.VOLTS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** ISO 10133 and ISO 13297. */
class CableSizeTest {
  private final Sum sum = new CableSize();

  /** S = 0.0164 · I · L / E by hand: 0.0164 × 10 A × 12 m ÷ 0.36 V = 5.47 mm², so 6 mm². */
  @Test
  void followsTheFormulaOfTheStandard() {
    Asked asked = Asked.of(sum, "current=10 A", "run=6 m", "load=critical");
    assertThat(asked.in(SQUARE_MILLIMETRE, "computed")).isCloseTo(5.4667, within(0.0001));
    assertThat(asked.in(SQUARE_MILLIMETRE, "size")).isEqualTo(6);
    assertThat(asked.in(VOLTS, "lost")).isLessThan(0.36);
  }

  /**
   * A published example: a 25 W lamp at 12 V (2.1 A) at the end of 18 m may lose 5 % (0.6 V) and
   * gets 2.5 mm²; there with 1/56, here with the standard's 0.0164, which comes to 2.07 against
   * 2.25 mm². At 6 V and 10 % as much may be lost.
   */
  @Test
  void agreesWithAPublishedExample() {
    Asked asked = Asked.of(sum, "current=2.1 A", "run=18 m", "voltage=6 V");
    assertThat(asked.in(SQUARE_MILLIMETRE, "computed")).isCloseTo(2.25, within(0.2));
    assertThat(asked.in(SQUARE_MILLIMETRE, "size")).isEqualTo(2.5);
  }

  /**
   * A published example in American sizes: 10 A over 21 ft in all, 10 %, 12 V: 16 AWG, that is 1.31
   * mm²; the next metric size up is 1.5 mm² and the formula asks for 0.87.
   */
  @Test
  void isNotThinnerThanTheAmericanTables() {
    Asked asked = Asked.of(sum, "current=10 A", "run=3.2 m", "insulation=to-60");
    assertThat(asked.in(SQUARE_MILLIMETRE, "computed")).isCloseTo(0.87, within(0.01));
    assertThat(asked.in(SQUARE_MILLIMETRE, "size")).isBetween(1.31, 1.5);
  }

  /** ISO 10133, 7.7: a conductor installed separately has at least 1 mm². */
  @Test
  void isNeverThinnerThanOneSquareMillimetre() {
    assertThat(Asked.of(sum, "current=0.1 A", "run=0.5 m").in(SQUARE_MILLIMETRE, "size"))
        .isEqualTo(1);
  }

  @Test
  void growsWithHeatAndBundles() {
    double cool = Asked.of(sum, "current=40 A", "run=0.5 m").in(SQUARE_MILLIMETRE, "size");
    double bundled =
        Asked.of(sum, "current=40 A", "run=0.5 m", "bundle=more").in(SQUARE_MILLIMETRE, "size");
    assertThat(cool).isEqualTo(6);
    assertThat(bundled).isEqualTo(16);
  }

  @Test
  void saysWhenNoCableWillDo() {
    assertThat(Asked.of(sum, "current=400 A", "run=60 m").warnings())
        .anyMatch(text -> text.contains("No single cable"));
    assertThat(Asked.of(sum, "insulation=to-60", "place=engine-space").warnings())
        .anyMatch(text -> text.contains("not allowed in an engine space"));
  }
}
