package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.LITRES_A_MINUTE;
import static limberboard.library.value.KnownUnit.MINUTES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Torricelli's law, with the discharge coefficients of hydraulics handbooks (from memory). */
class HoleInflowTest {
  private final Sum sum = new HoleInflow();

  /**
   * A jet under 1 m of water has √(2 × 9.80665) = 4.4287 m/s; through 1 cm² without loss that is
   * 26.57 l/min. The diameter of 1 cm² is 11.2838 mm; the rounded edge takes 2 % off.
   */
  @Test
  void followsTorricelli() {
    Asked asked = Asked.of(sum, "diameter=11.2838 mm", "depth=1 m", "edge=rounded");
    assertThat(asked.in(LITRES_A_MINUTE, "flow")).isCloseTo(26.572 * 0.98, within(0.01));
  }

  @Test
  void timesTheFillingOfTheSpace() {
    Asked asked = Asked.of(sum, "diameter=2 cm", "depth=50 cm", "space=100 l");
    double flow = asked.in(LITRES_A_MINUTE, "flow");
    assertThat(flow).isCloseTo(35.42, within(0.01));
    assertThat(asked.in(MINUTES, "time")).isCloseTo(100 / flow, within(1e-9));
  }

  @Test
  void fourTimesTheDepthGivesTwiceTheFlow() {
    double once = Asked.of(sum, "depth=0.5 m").in(LITRES_A_MINUTE, "flow");
    double deeper = Asked.of(sum, "depth=2 m").in(LITRES_A_MINUTE, "flow");
    assertThat(deeper).isCloseTo(2 * once, within(1e-9));
  }

  @Test
  void warnsOfAHoleThatIsLargeAgainstItsDepth() {
    assertThat(Asked.of(sum, "diameter=100 mm", "depth=0.2 m").warnings())
        .anyMatch(warning -> warning.contains("large against its depth"));
    assertThat(Asked.of(sum).warnings()).isEmpty();
  }

  @Test
  void warnsWhereTheFormulaIsNotKnownToHold() {
    assertThat(Asked.of(sum, "depth=40 m").warnings())
        .anyMatch(warning -> warning.contains("40 m lies outside 0.02 m to 10 m"));
  }

  @Test
  void refusesWhatCannotBeUsed() {
    assertThat(Asked.refused(sum, "depth=3 kg", "edge=square", "dept=1 m", "diameter=0 mm"))
        .containsExactly(
            "\"dept\" is no input of hole-inflow; did you mean \"depth\"?",
            "diameter (Diameter of the hole): 0 mm cannot be computed; it is 0.1 mm to 1000 mm",
            "depth (Depth below the water outside): 3 kg cannot be converted; write it such as"
                + " 0.5 m",
            "edge (Edge of the hole): \"square\" is not one of its words; choose sharp, pipe,"
                + " rounded");
  }
}
