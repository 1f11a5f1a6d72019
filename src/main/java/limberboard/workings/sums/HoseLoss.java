package limberboard.workings.sums;

/**
 * Head lost by water in a hose.
 *
 * @param boreMm bore, mm
 * @param lengthM length, m
 * @param ribbed whether its inside is ribbed
 * @param bends number of bends and valves
 */
record HoseLoss(double boreMm, double lengthM, boolean ribbed, double bends) {
  private static final double GRAVITY = 9.80665;
  private static final double MM_IN_M = 1000;
  private static final double LITRES_A_MINUTE_IN_M3_A_SECOND = 60_000;

  /** Water at 10 °C, m²/s. */
  private static final double VISCOSITY = 1.31e-6;

  private static final double SMOOTH_MM = 0.0015;
  private static final double RIBS_OF_BORE = 0.05;
  private static final double INLET_AND_OUTLET = 1.5;
  private static final double A_BEND = 0.9;
  private static final double TURBULENT_FROM = 2300;
  private static final double LAMINAR = 64;
  private static final int HALVINGS = 60;

  /** Head lost at a flow in l/min, m. */
  double headM(double litresAMinute) {
    if (litresAMinute <= 0) {
      return 0;
    }
    double bore = boreMm / MM_IN_M;
    double area = Math.PI / 4 * bore * bore;
    double speed = litresAMinute / LITRES_A_MINUTE_IN_M3_A_SECOND / area;
    double rough = ribbed ? RIBS_OF_BORE : SMOOTH_MM / boreMm;
    double friction = friction(speed * bore / VISCOSITY, rough) * lengthM / bore;
    return (friction + INLET_AND_OUTLET + A_BEND * bends) * speed * speed / (2 * GRAVITY);
  }

  /**
   * Darcy's friction factor.
   *
   * @param reynolds the Reynolds number, greater than 0
   * @param rough roughness over bore
   */
  static double friction(double reynolds, double rough) {
    if (reynolds < TURBULENT_FROM) {
      return LAMINAR / reynolds;
    }
    double log = Math.log10(rough / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
    return 0.25 / (log * log);
  }

  /**
   * What a pump lifts through the hose.
   *
   * @param rated its flow without lift, l/min
   * @param mostLiftM the lift at which nothing flows, m
   * @param liftM the lift, m
   * @return the flow, l/min; 0 when it cannot reach the lift
   */
  double flow(double rated, double mostLiftM, double liftM) {
    double low = 0;
    double high = rated;
    for (int i = 0; i < HALVINGS; i++) {
      double flow = (low + high) / 2;
      double share = flow / rated;
      boolean reaches = mostLiftM * (1 - share * share) >= liftM + headM(flow);
      low = reaches ? flow : low;
      high = reaches ? high : flow;
    }
    return low;
  }
}
