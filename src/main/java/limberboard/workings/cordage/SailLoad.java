package limberboard.workings.cordage;

/**
 * What sails pull with, after the loading formulas that deck-hardware guides have long printed:
 * pull in kilograms-force = 0.02104 × area in m² × (apparent wind in knots)², and for the mainsheet
 * the mainsail's leech with the boom as lever. B. Toss, <i>The Complete Rigger's Apprentice</i>,
 * prints them too. They are meant for medium-displacement monohulls; a multihull or a boat with
 * water ballast pulls harder.
 */
public final class SailLoad {
  private static final double KILOGRAMS_FORCE = 0.02104;
  private static final double STANDARD_GRAVITY = 9.80665;
  private static final double KNOT = 1852.0 / 3600;
  private static final double BEAUFORT = 0.836;
  private static final double LUFF_OF_SPINNAKER = 0.95;
  private static final double WIDTH_OF_SPINNAKER = 1.8;
  private static final double FULLNESS_OF_SPINNAKER = 0.83;

  private SailLoad() {}

  /**
   * The wind speed of a Beaufort number, 0.836·B^1.5 (World Meteorological Organization), in m/s.
   *
   * @param beaufort 0 to 12
   */
  public static double wind(int beaufort) {
    return BEAUFORT * Math.pow(beaufort, 1.5);
  }

  /**
   * The pull of a square metre of sail, in newtons.
   *
   * @param metresPerSecond apparent wind
   */
  public static double pressure(double metresPerSecond) {
    double knots = metresPerSecond / KNOT;
    return KILOGRAMS_FORCE * STANDARD_GRAVITY * knots * knots;
  }

  /** The foretriangle I·J/2, in m². */
  public static double headsailArea(double i, double j) {
    return i * j / 2;
  }

  /** The triangle of luff and foot P·E/2, in m². */
  public static double mainsailArea(double p, double e) {
    return p * e / 2;
  }

  /**
   * A spinnaker of full size: 0.83 × luff 0.95·√(I² + J²) × width 1.8·J, in m²; from memory of the
   * rating rules, an estimate.
   */
  public static double spinnakerArea(double i, double j) {
    return FULLNESS_OF_SPINNAKER
        * (LUFF_OF_SPINNAKER * Math.hypot(i, j))
        * (WIDTH_OF_SPINNAKER * j);
  }

  /**
   * The area that, taken as a sail's pull, gives the mainsheet's: E²·P² ÷ (√(P² + E²) × (E − x)).
   *
   * @param x how far before the boom's end the sheet pulls, in m, less than E
   * @return in m²
   */
  public static double mainsheetArea(double p, double e, double x) {
    return e * e * p * p / (Math.hypot(p, e) * (e - x));
  }
}
