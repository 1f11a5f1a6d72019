package limberboard.workings.sums;

import java.util.Arrays;
import java.util.List;

/**
 * ISO viscosity grades of hydraulic oils; the number is the middle of the grade at 40 °C, mm²/s,
 * and the grade goes 10 % to either side: ISO 3448.
 *
 * @param midpoint the number of the grade
 */
record OilGrade(int midpoint) {
  /** The grades of hydraulic oils, thinnest first. */
  static final List<OilGrade> ALL =
      Arrays.stream(new int[] {10, 15, 22, 32, 46, 68, 100, 150}).mapToObj(OilGrade::new).toList();

  static OilGrade of(String word) {
    return new OilGrade(Integer.parseInt(word.substring(2)));
  }

  String word() {
    return "vg" + midpoint;
  }

  String title() {
    return "ISO VG " + midpoint;
  }
}
