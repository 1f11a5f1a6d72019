package limberboard.workings.sums;

import limberboard.workings.sums.Input.Option;

/** Flow of water through a hole: Torricelli's law with a discharge coefficient. */
final class Orifice {
  private static final double GRAVITY = 9.80665;
  private static final double LITRES_A_MINUTE_IN_M3_A_SECOND = 60_000;
  private static final double MM_IN_M = 1000;
  private static final double SHARP = 0.60;
  private static final double PIPE = 0.82;
  private static final double ROUNDED = 0.98;

  private Orifice() {}

  /** The choice of the hole's edge. */
  static Input.Choice edge() {
    return Input.Choice.of(
        "edge",
        "Edge of the hole",
        new Option("sharp", "sharp or broken edge"),
        new Option("pipe", "short pipe or hose tail"),
        new Option("rounded", "well rounded edge"));
  }

  /** The discharge coefficient of an edge. */
  static double coefficient(String edge) {
    return switch (edge) {
      case "pipe" -> PIPE;
      case "rounded" -> ROUNDED;
      default -> SHARP;
    };
  }

  /** The area of a round hole, mm². */
  static double areaMm2(double diameterMm) {
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  /** Flow through a round hole, l/min; diameter in mm, depth in m. */
  static double litresAMinute(double coefficient, double diameterMm, double depthM) {
    double squareMetres = areaMm2(diameterMm) / (MM_IN_M * MM_IN_M);
    double speed = Math.sqrt(2 * GRAVITY * depthM);
    return coefficient * squareMetres * speed * LITRES_A_MINUTE_IN_M3_A_SECOND;
  }

  /** The round hole that lets a flow in, mm; flow in l/min, depth in m. */
  static double diameterMm(double coefficient, double litresAMinute, double depthM) {
    return Math.sqrt(litresAMinute / litresAMinute(coefficient, 1, depthM));
  }
}
