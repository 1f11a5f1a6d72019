package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Access within access against the published algorithm for trees of cost clusters. */
class CostClustersTest {
  private static final double CLOSE = 1e-6;

  @Property(tries = 500, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void areOpenedInTheBestOrder(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int clusters,
      @ForAll @IntRange(min = 2, max = 6) int mends) {
    ClusterTree tree = ClusterTree.random(seed, clusters, mends);
    EffortModel model = tree.model();

    Advice advice = new Planner(Long.MAX_VALUE).advise(model, model.beginning());

    assertThat(advice.best().expectedMinutes()).isCloseTo(tree.bottomUp(), within(CLOSE));
    assertThat(advice.gap()).isCloseTo(0, within(1e-9));
  }

  /** The algorithm itself, so that the two cannot be wrong in the same way. */
  @Property(tries = 300, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void areOpenedInTheBestOfAllOrders(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int clusters,
      @ForAll @IntRange(min = 2, max = 6) int mends) {
    ClusterTree tree = ClusterTree.random(seed, clusters, mends);
    EffortModel model = tree.model();

    assertThat(tree.bottomUp())
        .isCloseTo(
            new EveryOrder(model).cheapest(tree.chances(), new BitSet(), new BitSet()),
            within(CLOSE));
  }
}
