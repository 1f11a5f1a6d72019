package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.SQUARE_MILLIMETRES_A_SECOND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 3448, ASTM D341 and ASTM D2270, with published pairs and examples. */
class OilViscosityTest {
  private final Sum sum = new OilViscosity();

  /** ISO 3448: each grade's middle at 40 °C is its number. */
  @ParameterizedTest
  @CsvSource({"10", "15", "22", "32", "46", "68", "100", "150"})
  void meetsTheMiddleOfTheGradeAtForty(int grade) {
    Asked asked = Asked.of(sum, "grade=vg" + grade, "warmest=40 °C");
    assertThat(asked.in(SQUARE_MILLIMETRES_A_SECOND, "warm"))
        .isCloseTo(grade, within(1e-9 * grade));
  }

  /**
   * A published worksheet for ASTM D341: 32 mm²/s at 40 °C and 5.4 at 100 °C give A = 9.5259, B =
   * 3.7449 (with 273 for 273.15) and 8.5 at 80 °C.
   */
  @Test
  void followsAWorkedExampleOfD341() {
    ViscosityLine line = ViscosityLine.through(40, 32, 100, 5.4);
    assertThat(line.at(80)).isCloseTo(8.5, within(0.05));
    assertThat(line.a()).isCloseTo(9.5259, within(0.005));
    assertThat(line.b()).isCloseTo(3.7449, within(0.002));
    Asked asked = Asked.of(sum, "grade=vg32", "at-100=5.4 mm2/s", "coldest=40 °C", "warmest=80 °C");
    assertThat(asked.in(SQUARE_MILLIMETRES_A_SECOND, "warm")).isCloseTo(8.5, within(0.05));
    assertThat(asked.in(SQUARE_MILLIMETRES_A_SECOND, "cold")).isCloseTo(32, within(1e-9));
  }

  /**
   * Published with an open library for ASTM D341: viscosity at 60 °C from 40 and 100 °C. It uses
   * another shift than 0.7, so within one per cent.
   */
  @ParameterizedTest
  @CsvSource({"30, 5.23, 14.525", "70, 11.1, 32.9198", "120, 20.9, 59.5139", "68, 8.6, 28.6455"})
  void meetsPublishedViscositiesAtSixty(double at40, double at100, double at60) {
    assertThat(ViscosityLine.through(40, at40, 100, at100).at(60))
        .isCloseTo(at60, within(at60 * 0.01));
  }

  /**
   * Published pairs with their index: two open libraries for ASTM D2270, and the three worked
   * examples of the standard (73.30/8.86, 22.83/5.05, 53.47/7.80: from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "30, 5.23, 104",
    "30, 5.81, 139",
    "68, 8.6, 96",
    "120, 20.9, 200",
    "104.7, 13.9, 134",
    "73.30, 8.86, 92",
    "22.83, 5.05, 156",
    "53.47, 7.80, 111"
  })
  void meetsPublishedViscosityIndices(double at40, double at100, double index) {
    assertThat(ViscosityIndex.of(at40, at100)).isCloseTo(index, within(1.0));
  }

  /** Published with an open library: 112 mm²/s at 40 °C and index 130 are 14.38 at 100 °C. */
  @Test
  void findsTheViscosityAtAHundredFromTheIndex() {
    assertThat(ViscosityIndex.at100(112, 130)).isCloseTo(14.38, within(0.05));
  }

  /** Common practice, no source: ISO VG 46 for a hydraulic lifting keel in temperate waters. */
  @Test
  void namesTheGradesThatSuit() {
    assertThat(Asked.of(sum, "coldest=0 °C", "warmest=35 °C").said("suits")).contains("ISO VG 46");
    Asked arctic = Asked.of(sum, "coldest=-25 °C", "warmest=10 °C");
    assertThat(arctic.said("suits")).doesNotContain("ISO VG 46");
    assertThat(arctic.warnings()).anyMatch(warning -> warning.contains("Too thick"));
  }
}
