package limberboard.workings.cordage;

/**
 * How many turns a lashing takes. Every turn lays two parts of cord between the two things; the
 * parts do not share the load evenly, since each turn rubs over the ring; and the cord ends in a
 * knot.
 *
 * <p>The share of 0.7 is common practice, no source. The knot is counted in full although the turns
 * before it take most of its load, so the result is on the safe side.
 */
public final class Lashing {
  /** What the parts of a lashing carry together, as a share of what they would were they even. */
  public static final double EVENNESS = 0.7;

  private static final int PARTS_IN_A_TURN = 2;
  private static final int FEWEST = 3;
  private static final double HAIR = 1e-9;

  private Lashing() {}

  /**
   * What a lashing of so many turns breaks at when it has aged, in newtons.
   *
   * @param turns 1 or more
   * @param breaking what one part of the new cord breaks at, in newtons
   */
  public static double holds(int turns, double breaking) {
    return PARTS_IN_A_TURN
        * turns
        * breaking
        * EVENNESS
        * RopeStrength.KNOT_KEEPS
        * RopeStrength.AGE_KEEPS;
  }

  /**
   * Turns for a load, with the safety factor of {@link RopeStrength#SAFETY}; never fewer than
   * three, below which a lashing does not stay tight.
   *
   * @param load in newtons, 0 or more
   * @param breaking what one part of the new cord breaks at, in newtons, more than 0
   */
  public static int turns(double load, double breaking) {
    double exact = load * RopeStrength.SAFETY / holds(1, breaking);
    return Math.max(FEWEST, (int) Math.ceil(exact - HAIR));
  }
}
