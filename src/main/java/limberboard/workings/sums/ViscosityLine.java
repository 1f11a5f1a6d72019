package limberboard.workings.sums;

/**
 * Viscosity of an oil over temperature: the straight line of Ubbelohde and Walther through two
 * points, log₁₀ log₁₀ (ν + 0.7) = a − b · log₁₀ T with T in K (ASTM D341, above 2 mm²/s).
 *
 * @param a the line's height
 * @param b its slope
 */
record ViscosityLine(double a, double b) {
  private static final double KELVIN = 273.15;
  private static final double SHIFT = 0.7;

  /** Where the simple form of the line begins to hold, mm²/s. */
  static final double HOLDS_FROM = 2;

  /** The line through two points: °C and mm²/s, of different temperatures. */
  static ViscosityLine through(double celsius1, double nu1, double celsius2, double nu2) {
    double b = (w(nu1) - w(nu2)) / (logT(celsius2) - logT(celsius1));
    return new ViscosityLine(w(nu1) + b * logT(celsius1), b);
  }

  /** Viscosity at a temperature, mm²/s. */
  double at(double celsius) {
    return Math.pow(10, Math.pow(10, a - b * logT(celsius))) - SHIFT;
  }

  private static double w(double nu) {
    return Math.log10(Math.log10(nu + SHIFT));
  }

  private static double logT(double celsius) {
    return Math.log10(celsius + KELVIN);
  }
}
