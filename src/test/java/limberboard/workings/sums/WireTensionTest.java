package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.HUNDREDTHS;
import static limberboard.library.value.KnownUnit.KILONEWTON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hooke's law with published moduli, crossed with riggers' rule of thumb. */
class WireTensionTest {
  private final Sum sum = new WireTension();

  /** F = E · A · ε: 107 kN/mm² × π/4 × 36 mm² × 3/2000 = 4.538 kN. */
  @Test
  void followsHooke() {
    assertThat(Asked.of(sum, "diameter=6 mm", "stretch=3 mm").in(KILONEWTON, "tension"))
        .isCloseTo(4.538, within(0.001));
  }

  /**
   * Riggers' rule: 1 mm over 2 m is 5 % of the breaking load of 1x19 (common practice, no source).
   */
  @ParameterizedTest
  @CsvSource({"4", "5", "6", "7", "8"})
  void agreesWithTheRuleOfThumb(int diameter) {
    Asked asked = Asked.of(sum, "diameter=" + diameter + " mm", "stretch=1 mm");
    assertThat(asked.in(HUNDREDTHS, "share")).isCloseTo(5, within(0.75));
  }

  /**
   * Breaking loads of 1x19: 5 mm 2000 kg and 7 mm 3500 kg from a tension gauge's sheet, 1/4 in 6900
   * lb, 5/16 in 10 600 lb and 7/16 in 20 000 lb from a published table.
   */
  @ParameterizedTest
  @CsvSource({"5, 19.6", "7, 34.3", "6.35, 30.7", "7.94, 47.2", "11.11, 89.0"})
  void estimatesPublishedBreakingLoads(double diameter, double kilonewtons) {
    Asked asked = Asked.of(sum, "diameter=" + diameter + " mm");
    assertThat(asked.in(KILONEWTON, "breaking")).isCloseTo(kilonewtons, within(kilonewtons * 0.1));
  }

  @Test
  void takesTheGivenBreakingLoadAndWarnsOfTooMuch() {
    Asked asked = Asked.of(sum, "breaking=10 kN", "stretch=4 mm");
    assertThat(asked.in(HUNDREDTHS, "share"))
        .isCloseTo(asked.in(KILONEWTON, "tension") * 10, within(1e-9));
    assertThat(asked.warnings()).anyMatch(text -> text.contains("slack off"));
  }
}
