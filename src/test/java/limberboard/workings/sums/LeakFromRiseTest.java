package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.LITRES_AN_HOUR;
import static limberboard.library.value.KnownUnit.LITRES_A_MINUTE;
import static limberboard.library.value.KnownUnit.MILLIMETRE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The reverse of Torricelli's law: what goes in at one sum comes out at the other. */
class LeakFromRiseTest {
  private final Sum sum = new LeakFromRise();

  /** 1 m² × 1 mm is a litre, by geometry. */
  @Test
  void countsTheWater() {
    Asked asked = Asked.of(sum, "surface=0.4 m2", "rise=3 cm", "time=30 min");
    assertThat(asked.in(LITRES_AN_HOUR, "flow")).isCloseTo(24, within(1e-9));
  }

  @Test
  void findsTheHoleThatLetsItIn() {
    Asked leak = Asked.of(sum, "surface=1 m2", "rise=100 mm", "time=10 min", "depth=0.5 m");
    String hole = String.format("%.9f mm", leak.in(MILLIMETRE, "hole"));
    Asked inflow = Asked.of(new HoleInflow(), "diameter=" + hole, "depth=0.5 m");
    assertThat(inflow.in(LITRES_A_MINUTE, "flow")).isCloseTo(10, within(1e-6));
  }

  @Test
  void saysThatSeepingIsAnotherMatter() {
    assertThat(Asked.of(sum, "rise=2 mm", "time=24 h").warnings())
        .anyMatch(text -> text.contains("seeps"));
  }
}
