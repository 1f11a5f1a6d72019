package limberboard.upkeep.shopping;

/**
 * Lengths as whole tenths of a millimetre, so that cutting is exact: what is needed is rounded up,
 * what there is is rounded down, and no piece can come out short.
 */
final class Lengths {
  private static final double IN_A_METRE = 10_000;
  private static final double HAIR = 1e-6;

  private Lengths() {}

  static long needed(double metres) {
    return (long) Math.ceil(metres * IN_A_METRE - HAIR);
  }

  static long available(double metres) {
    return (long) Math.floor(metres * IN_A_METRE + HAIR);
  }

  static double metres(long length) {
    return length / IN_A_METRE;
  }
}
