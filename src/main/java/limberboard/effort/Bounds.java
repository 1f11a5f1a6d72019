package limberboard.effort;

/**
 * What the best strategy for a fault costs at least, proven with more work than one step is worth.
 */
public final class Bounds {
  private static final double EXACT = 5e-7;
  private static final int FOR_EXACTNESS = 30;

  private Bounds() {}

  /**
   * Minutes that no strategy goes below on average from the beginning of a fault.
   *
   * @param model what everything costs
   * @param enough stops when it is proven that nothing costs less than this, in minutes; the first
   *     thirtieth part of the work is done in any case, so that small faults are closed in exactly
   * @param work chances that may be weighed; a thousand million take minutes and gigabytes
   */
  public static double atLeast(EffortModel model, double enough, long work) {
    Search search = new Search(model, model.beginning(), LowerBound.thorough(model));
    search.run(EXACT, Double.POSITIVE_INFINITY, work / FOR_EXACTNESS);
    search.run(EXACT, enough, work);
    return search.root().atLeast;
  }
}
