package limberboard.upkeep.plan;

/**
 * How good a plan is.
 *
 * @param danger the danger that it takes out
 * @param most the danger that any choice of work can take out at most, proven
 * @param all the danger of all that is due
 * @param best whether no choice is better, comfort included
 */
public record Proof(long danger, long most, long all, boolean best) {
  private static final long PER_CENT = 100;

  /** Whether no choice takes more danger out. */
  public boolean isMostDanger() {
    return most <= danger;
  }

  /**
   * By how many per cent more danger any other choice can take out at most, rounded up; 0 when none
   * can.
   */
  public long gap() {
    return isMostDanger() || danger == 0
        ? (isMostDanger() ? 0 : PER_CENT)
        : ((most - danger) * PER_CENT + danger - 1) / danger;
  }

  /** The share of the danger of all that is due, from 0 to 1; 1 when nothing is due. */
  public double share() {
    return all == 0 ? 1 : (double) danger / all;
  }
}
