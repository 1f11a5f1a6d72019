package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.AMPERES;
import static limberboard.library.value.KnownUnit.KILOGRAM;
import static limberboard.library.value.KnownUnit.YEARS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import limberboard.library.value.Water;
import org.junit.jupiter.api.Test;

/** DNV-RP-B401, with a worked example that is published for it. */
class AnodeMassTest {
  private final Sum sum = new AnodeMass();

  /**
   * A worked example of an offshore jacket by DNV-RP-B401, published with an open library of
   * engineering sums: 12,000 m² in temperate water (0.100 A/m²), mean coating breakdown 0.17, 25
   * years, 2000 Ah/kg, use 0.90: 204.0 A and 24,820 kg.
   */
  @Test
  void givesTheMassOfAWorkedExample() {
    Asked asked =
        Asked.of(
            sum,
            "area=12000 m2",
            "bare=17 %",
            "density=100 mA/m2",
            "life=25 years",
            "shape=stand-off");
    assertThat(asked.in(AMPERES, "current")).isCloseTo(204.0, within(0.05));
    assertThat(asked.in(KILOGRAM, "mass")).isCloseTo(24_820, within(1.0));
  }

  @Test
  void lastsAsLongAsItWasWorkedOutFor() {
    Asked asked = Asked.of(sum, "life=3 years", "area=1 m2");
    double mass = asked.in(KILOGRAM, "mass");
    Asked back = Asked.of(sum, "area=1 m2", "fitted=" + String.format("%.6f", mass) + " kg");
    assertThat(back.in(YEARS, "life")).isCloseTo(3, within(1e-4));
  }

  /** Faraday: 2 · 96485 C/mol ÷ 24.305 g/mol ÷ 3.6 = 2205 Ah/kg, of which half is used. */
  @Test
  void takesHalfOfFaradayForMagnesium() {
    double faraday = 2 * 96_485.0 / 24.305 / 3.6;
    assertThat(AnodeCapacity.MAGNESIUM.ampereHoursAKilogram()).isCloseTo(faraday / 2, within(5.0));
  }

  /** Common practice, no source: magnesium fresh, zinc salt, aluminium salt and brackish. */
  @Test
  void knowsWhichAlloyGoesInWhichWater() {
    for (Water water : Water.values()) {
      assertThat(AnodeCapacity.MAGNESIUM.against(water).isEmpty()).isEqualTo(water == Water.FRESH);
      assertThat(AnodeCapacity.ZINC.against(water).isEmpty()).isEqualTo(water == Water.SALT);
      assertThat(AnodeCapacity.ALUMINIUM.against(water).isEmpty()).isEqualTo(water != Water.FRESH);
    }
    assertThat(Asked.of(sum, "water=salt", "alloy=magnesium").warnings())
        .anyMatch(warning -> warning.contains("fresh water only"));
    assertThat(Asked.of(sum).warnings()).isEmpty();
  }
}
