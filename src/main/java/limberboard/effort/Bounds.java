package limberboard.effort;

/**
 * What the best strategy for a fault costs on average, closed in from both sides.
 *
 * @param atLeast proven: nothing costs less, in minutes
 * @param atMost a strategy that costs no more was found, in minutes
 * @param situations how many situations were looked at
 */
public record Bounds(double atLeast, double atMost, int situations) {
  private static final double EXACT = 1e-6;
  private static final int FOR_EXACTNESS = 30;

  /**
   * Closes in on the best strategy from the beginning of a fault.
   *
   * @param model what everything costs
   * @param enough stops when it is proven that nothing costs less than this, in minutes; the first
   *     thirtieth part of the work is done in any case, so that small faults are closed in exactly
   * @param work chances that may be weighed; a thousand million take minutes and gigabytes
   */
  public static Bounds of(EffortModel model, double enough, long work) {
    Search search = new Search(model, model.beginning());
    Node root = search.root();
    search.run(EXACT / 2, Double.POSITIVE_INFINITY, work / FOR_EXACTNESS);
    search.run(EXACT / 2, enough, work);
    return new Bounds(root.atLeast, root.atMost, search.situations());
  }

  /** Whether the two meet: the strategy is the best there is. */
  public boolean exact() {
    return atMost - atLeast <= EXACT;
  }
}
