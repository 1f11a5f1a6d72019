package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.METRES;
import static limberboard.library.value.KnownUnit.MILLILITRE;
import static limberboard.library.value.KnownUnit.PIECES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Geometry; a 6 × 6 mm bead from a 310 ml cartridge reaches 8.6 m in every sealant maker's table.
 */
class SealantBeadTest {
  private final Sum sum = new SealantBead();

  @Test
  void reachesAsFarAsTheTablesSay() {
    Asked asked = Asked.of(sum, "cartridge=310 ml", "waste=0 %");
    assertThat(asked.in(METRES, "reach")).isCloseTo(8.61, within(0.01));
  }

  @Test
  void takesHalfForAFillet() {
    double full = Asked.of(sum, "length=2 m").in(MILLILITRE, "volume");
    double fillet = Asked.of(sum, "length=2 m", "section=fillet").in(MILLILITRE, "volume");
    assertThat(full).isCloseTo(2 * 36 * 1.1, within(1e-9));
    assertThat(fillet).isCloseTo(full / 2, within(1e-9));
  }

  @Test
  void roundsUpToWholeCartridgesAndNotBeyond() {
    assertThat(
            Asked.of(sum, "length=2.9 m", "width=10 mm", "depth=10 mm", "waste=0 %")
                .in(PIECES, "cartridges"))
        .isEqualTo(1);
    assertThat(
            Asked.of(sum, "length=2.91 m", "width=10 mm", "depth=10 mm", "waste=0 %")
                .in(PIECES, "cartridges"))
        .isEqualTo(2);
  }
}
