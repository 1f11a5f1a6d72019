package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The bound against every strategy there is, on small random problems. */
class LowerBoundTest {
  private static final double ROUNDING = 1e-9;

  @Property(tries = 2_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void isNeverAboveTheCheapestStrategy(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll AccessShape shape) {
    RandomModels random = new RandomModels(seed);
    EffortModel model = random.fullModel(causes, checks, 3, shape);
    assertBelow(model, model.beginning());
    assertBelow(model, random.situation(model));
  }

  private static void assertBelow(EffortModel model, Situation now) {
    LowerBound bound = new LowerBound(model);
    assertThat(bound.minutes(now.chances(), bound.costs(now.open()), now.asked(), now.tried()))
        .isPositive()
        .isLessThanOrEqualTo(new EveryStrategy(model).cheapest(now) + ROUNDING);
  }

  /** Otherwise a bound of nothing at all would pass. */
  @Property(tries = 200, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void isTheCostItselfWhenTheCauseIsKnown(@ForAll @LongRange(min = 0) long seed) {
    EffortModel model = new RandomModels(seed).fullModel(1, 0, 3, AccessShape.ANY);
    Situation now = model.beginning();
    LowerBound bound = new LowerBound(model);
    assertThat(bound.minutes(now.chances(), bound.costs(now.open()), now.asked(), now.tried()))
        .isCloseTo(new EveryStrategy(model).cheapest(now), within(ROUNDING));
  }
}
