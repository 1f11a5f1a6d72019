package limberboard.workings.sums;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * Standard cross-sections and what they may carry, by the temperature their insulation stands: as
 * in annex A of ISO 10133 and ISO 13297, <b>from memory</b>.
 */
final class CableTable {
  private static final double[] SECTIONS = {
    0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150
  };
  private static final double[] AT_60 = {
    6, 8, 12, 17, 22, 29, 40, 54, 71, 87, 105, 135, 165, 190, 220
  };
  private static final double[] AT_70 = {
    10, 14, 18, 25, 35, 45, 65, 90, 120, 160, 210, 265, 310, 360, 380
  };
  private static final double[] AT_85 = {
    12, 18, 21, 30, 40, 50, 70, 100, 140, 185, 230, 285, 330, 400, 430
  };
  private static final double[] AT_105 = {
    16, 20, 25, 35, 45, 60, 90, 130, 170, 210, 270, 330, 390, 450, 475
  };

  /** No single conductor longer than 200 mm is thinner: ISO 10133, 7.7. */
  private static final double LEAST = 1;

  private CableTable() {}

  /** The smallest standard cross-section that is at least this, mm². */
  static OptionalDouble next(double section) {
    double least = Math.max(section, LEAST);
    return Arrays.stream(SECTIONS).filter(each -> each >= least).findFirst();
  }

  /**
   * The smallest standard cross-section that may carry a current, mm².
   *
   * @param amperes the current
   * @param insulation word of the insulation's temperature
   * @param factor what is left of the table's current
   */
  static OptionalDouble carrying(double amperes, String insulation, double factor) {
    double[] carries = column(insulation);
    for (int i = 0; i < SECTIONS.length; i++) {
      if (SECTIONS[i] >= LEAST && carries[i] * factor >= amperes) {
        return OptionalDouble.of(SECTIONS[i]);
      }
    }
    return OptionalDouble.empty();
  }

  /** What is left of the table's current in an engine space; 0: not allowed there. */
  static double inEngineSpace(String insulation) {
    return switch (insulation) {
      case "to-60" -> 0;
      case "to-70" -> 0.75;
      case "to-85" -> 0.82;
      default -> 0.86;
    };
  }

  /** What is left of the table's current in a bundle. */
  static double inBundle(String bundle) {
    return switch (bundle) {
      case "to-6" -> 0.7;
      case "to-24" -> 0.6;
      case "more" -> 0.5;
      default -> 1;
    };
  }

  private static double[] column(String insulation) {
    return switch (insulation) {
      case "to-60" -> AT_60;
      case "to-85" -> AT_85;
      case "to-105" -> AT_105;
      default -> AT_70;
    };
  }
}
