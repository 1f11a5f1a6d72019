package limberboard.workings.sums;

import java.util.Locale;

/**
 * Metric coarse threads. Pitches: ISO 261; diameters from them: ISO 724. Bearing faces of hexagon
 * heads: ISO 4014, clearance holes: ISO 273 medium; both from memory.
 */
enum IsoThread {
  /** 4 mm. */
  M4(4, 0.7, 5.88, 4.5),
  /** 5 mm. */
  M5(5, 0.8, 6.88, 5.5),
  /** 6 mm. */
  M6(6, 1, 8.88, 6.6),
  /** 8 mm. */
  M8(8, 1.25, 11.63, 9),
  /** 10 mm. */
  M10(10, 1.5, 14.63, 11),
  /** 12 mm. */
  M12(12, 1.75, 16.63, 13.5),
  /** 14 mm. */
  M14(14, 2, 19.37, 15.5),
  /** 16 mm. */
  M16(16, 2, 22.49, 17.5);

  private final ThreadSize size;

  IsoThread(double diameter, double pitch, double face, double hole) {
    this.size = new ThreadSize(diameter, pitch, face, hole);
  }

  ThreadSize size() {
    return size;
  }

  static IsoThread of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
