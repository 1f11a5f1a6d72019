package limberboard.workings.sums;

import static limberboard.library.value.KnownUnit.KILONEWTON;
import static limberboard.library.value.KnownUnit.NEWTON_METRES;
import static limberboard.library.value.KnownUnit.PIECES;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 724, ISO 898-1, ISO 3506-1 and the tables of VDI 2230. */
class BoltTorqueTest {
  private final Sum sum = new BoltTorque();

  /** ISO 724 pitch diameters and ISO 898-1 stress areas (M14, M16 from memory). */
  @ParameterizedTest
  @CsvSource({
    "M4, 3.545, 8.78", "M5, 4.480, 14.2", "M6, 5.350, 20.1", "M8, 7.188, 36.6",
    "M10, 9.026, 58.0", "M12, 10.863, 84.3", "M14, 12.701, 115", "M16, 14.701, 157"
  })
  void hasTheDiametersAndStressAreasOfTheStandards(IsoThread thread, double pitch, double area) {
    assertThat(thread.size().pitchDiameter()).isCloseTo(pitch, within(0.0006));
    assertThat(thread.size().stressArea()).isCloseTo(area, within(area * 0.0045));
  }

  /** ISO 3506-1: 0.2 % stress of classes 50, 70 and 80, the same for A2 and A4. */
  @ParameterizedTest
  @CsvSource({"a2-50, 210", "a2-70, 450", "a2-80, 600", "a4-50, 210", "a4-70, 450", "a4-80, 600"})
  void hasTheStressOfTheClass(String steel, double stress) {
    Asked asked = Asked.of(sum, "thread=m8", "steel=" + steel);
    assertThat(asked.in(KILONEWTON, "yields")).isCloseTo(36.6 * stress / 1000, within(0.02));
  }

  /**
   * A published extract of VDI 2230 (2001 edition), fine threads of class 8.8 (640 N/mm² up to M16)
   * at 90 %: preload in kN and torque in Nm.
   */
  @ParameterizedTest
  @CsvSource({
    "8, 1, 11.63, 9, 0.10, 20.7, 22.8",
    "8, 1, 11.63, 9, 0.12, 20.2, 26.1",
    "8, 1, 11.63, 9, 0.14, 19.7, 29.2",
    "10, 1.25, 14.63, 11, 0.12, 31.6, 51",
    "12, 1.25, 16.63, 13.5, 0.12, 48.0, 90",
    "14, 1.5, 19.37, 15.5, 0.12, 64.8, 142",
    "16, 1.5, 22.49, 17.5, 0.12, 87.6, 218"
  })
  void meetsTheTablesOfTheGuideline(
      double d,
      double p,
      double face,
      double hole,
      double friction,
      double preload,
      double torque) {
    ThreadSize thread = new ThreadSize(d, p, face, hole);
    double newtons = thread.preload(640, 0.9, friction);
    assertThat(newtons / 1000).isCloseTo(preload, within(preload * 0.01));
    assertThat(thread.torque(newtons, friction)).isCloseTo(torque, within(torque * 0.02));
  }

  /**
   * A published table of torques by strength class at friction 0.14 (coarse threads, an older and
   * more careful edition): A2-70 M5 4.2, M6 7.3, M8 17.5, M10 35, M12 60 Nm.
   */
  @ParameterizedTest
  @CsvSource({"m5, 4.2", "m6, 7.3", "m8, 17.5", "m10, 35", "m12, 60"})
  void liesNearPublishedTorquesForStainless(String thread, double torque) {
    Asked asked = Asked.of(sum, "thread=" + thread, "steel=a2-70", "share=80 %");
    assertThat(asked.in(NEWTON_METRES, "torque")).isCloseTo(torque, within(torque * 0.1));
  }

  /** The handbooks' K = 0.2 is for friction near 0.15. */
  @Test
  void givesTheHandbooksFactor() {
    assertThat(Asked.of(sum, "friction=0.15").in(PIECES, "k")).isCloseTo(0.2, within(0.01));
  }

  @Test
  void warnsOfDryThreads() {
    assertThat(Asked.of(sum, "friction=0.25").warnings()).anyMatch(text -> text.contains("galls"));
    assertThat(Asked.of(sum).warnings()).isEmpty();
  }
}
