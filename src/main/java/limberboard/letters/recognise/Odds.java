package limberboard.letters.recognise;

/** Chances as odds and back. */
final class Odds {
  private Odds() {}

  /**
   * The logarithm of how much likelier something is than not.
   *
   * @param chance 0 to 1
   * @param least chances are taken to be at least this far from 0 and from 1, more than 0
   */
  static double of(double chance, double least) {
    double within = Math.max(least, Math.min(1 - least, chance));
    return Math.log(within / (1 - within));
  }

  /** The chance that odds stand for, 0 to 1. */
  static double chance(double odds) {
    return 1 / (1 + Math.exp(-odds));
  }
}
