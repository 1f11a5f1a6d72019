package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import limberboard.letters.recognise.ChanceQuality.Said;
import org.junit.jupiter.api.Test;

/** Said chances beside what then was so, by the definitions of the papers that the class names. */
class ChanceQualityTest {
  private static List<Said> said(double chance, int so, int not) {
    List<Said> all = new ArrayList<>();
    for (int i = 0; i < so + not; i++) {
      all.add(new Said(chance, i < so));
    }
    return all;
  }

  @Test
  void sureAndRightIsPerfectAndSureAndWrongTheWorst() {
    assertThat(ChanceQuality.of(said(1, 4, 0))).isEqualTo(new ChanceQuality(0, 0, 4));
    assertThat(ChanceQuality.of(said(1, 0, 4))).isEqualTo(new ChanceQuality(1, 1, 4));
  }

  @Test
  void chancesThatHoldHaveNoCalibrationErrorThoughTheyScore() {
    ChanceQuality of = ChanceQuality.of(said(0.75, 3, 1));

    assertThat(of.error()).isCloseTo(0, within(1e-12));
    assertThat(of.brier()).isCloseTo((3 * 0.0625 + 0.5625) / 4, within(1e-12));
  }

  @Test
  void binsCountByTheirLetters() {
    List<Said> all = said(0.95, 3, 0);
    all.addAll(said(0.15, 1, 0));

    assertThat(ChanceQuality.of(all).error()).isCloseTo((3 * 0.05 + 0.85) / 4, within(1e-12));
  }

  @Test
  void ofNothingSaidNothingIsOff() {
    assertThat(ChanceQuality.of(List.of())).isEqualTo(new ChanceQuality(0, 0, 0));
  }
}
