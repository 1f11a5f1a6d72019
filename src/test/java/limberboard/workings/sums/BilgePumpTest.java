package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.LITRES_A_MINUTE;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Head loss by Darcy and Weisbach, with points read from Moody's chart (from memory). */
class BilgePumpTest {
  private final Sum sum = new BilgePump();

  /** Moody's chart: Re, roughness, friction factor. */
  @ParameterizedTest
  @CsvSource({
    "1000, 0, 0.064",
    "100000, 0, 0.0180",
    "1000000, 0, 0.0116",
    "100000, 0.001, 0.0222",
    "1000000, 0.001, 0.0199",
    "1000000, 0.01, 0.0380",
    "100000, 0.05, 0.0716"
  })
  void meetsTheFrictionFactorsOfMoody(double reynolds, double rough, double factor) {
    assertThat(HoseLoss.friction(reynolds, rough)).isCloseTo(factor, within(factor * 0.03));
  }

  /**
   * Without loss in the hose the parabola alone counts: half the flow at three quarters of the
   * lift.
   */
  @Test
  void followsThePumpsCurveWhereTheHoseIsWide() {
    Asked asked =
        Asked.of(sum, "bore=300 mm", "hose=0.1 m", "bends=0", "most-lift=4 m", "lift=3 m");
    assertThat(asked.in(LITRES_A_MINUTE, "flow")).isCloseTo(15, within(0.01));
  }

  @Test
  void liftsNothingBeyondItsReach() {
    Asked asked = Asked.of(sum, "lift=3.5 m");
    assertThat(asked.in(LITRES_A_MINUTE, "flow")).isCloseTo(0, within(1e-9));
    assertThat(asked.warnings()).anyMatch(text -> text.contains("nothing comes out"));
  }

  @Test
  void losesMoreInANarrowOrRibbedHose() {
    double usual = Asked.of(sum).in(LITRES_A_MINUTE, "flow");
    assertThat(Asked.of(sum, "bore=12 mm").in(LITRES_A_MINUTE, "flow")).isLessThan(usual * 0.7);
    assertThat(Asked.of(sum, "wall=ribbed").in(LITRES_A_MINUTE, "flow")).isLessThan(usual);
  }

  @Test
  void keepsUpWithTheHoleThatLetsInAsMuch() {
    Asked asked = Asked.of(sum);
    String hole = String.format("%.9f mm", asked.in(MILLIMETRE, "hole"));
    assertThat(Asked.of(new HoleInflow(), "diameter=" + hole).in(LITRES_A_MINUTE, "flow"))
        .isCloseTo(asked.in(LITRES_A_MINUTE, "flow"), within(1e-6));
  }
}
