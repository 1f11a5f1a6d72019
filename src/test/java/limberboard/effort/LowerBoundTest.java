package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** The bounds against every strategy there is, on small random problems. */
class LowerBoundTest {
  private static final double ROUNDING = 1e-9;

  /** The share of a pair's weight that both causes have alike. */
  private static final int EVEN = CausePair.SHARES / 2;

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
    double cheapest = new EveryStrategy(model).cheapest(now);
    double quick = minutes(new LowerBound(model), now);
    double thorough = minutes(LowerBound.thorough(model), now);
    assertThat(quick).isPositive().isLessThanOrEqualTo(cheapest + ROUNDING);
    assertThat(thorough).isBetween(quick, cheapest + ROUNDING);
  }

  private static double minutes(LowerBound bound, Situation now) {
    return bound.minutes(now.chances(), bound.costs(now.open()), now.asked(), now.tried());
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

  /**
   * Two causes, one check of 1 minute that tells nothing of them and one of 5 that tells all: what
   * is known costs 30 on average, the cheapest first step 1, and telling them apart 5.
   */
  @Test
  void theThoroughBoundKnowsWhichChecksTellTheCausesApart() {
    double[][] nothing = {{0.5, 0.5}, {0.5, 0.5}};
    double[][] all = {{1, 0}, {0, 1}};
    List<CheckEffort> checks =
        List.of(
            new CheckEffort(1, new BitSet(), 0, false), new CheckEffort(5, new BitSet(), 0, false));
    List<MendEffort> mends =
        List.of(
            new MendEffort(20, new BitSet(), 1, true), new MendEffort(40, new BitSet(), 1, true));
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {1, 1}, List.of(nothing, all)),
            checks,
            mends,
            new double[0],
            500);
    Situation now = model.beginning();
    assertThat(minutes(new LowerBound(model), now)).isCloseTo(31, within(ROUNDING));
    assertThat(minutes(LowerBound.thorough(model), now)).isCloseTo(35, within(ROUNDING));
    assertThat(new EveryStrategy(model).cheapest(now)).isCloseTo(35, within(ROUNDING));
  }

  /** With two causes and no access the pair is the whole problem, also where mends may fail. */
  @Property(tries = 1_000, seed = "20261130", edgeCases = EdgeCasesMode.NONE)
  void twoCausesAloneAreClosedInNearly(
      @ForAll @LongRange(min = 0) long seed, @ForAll @IntRange(min = 0, max = 3) int checks) {
    EffortModel random = new RandomModels(seed).model(2, checks, 0, AccessShape.NONE);
    EffortModel model =
        new EffortModel(random.answers(), random.checks(), random.mends(), new double[0], 300);
    double[] even = {0.5, 0.5};
    Situation now = new Situation(even, new BitSet(), new BitSet(), new BitSet());
    double[] known = new LowerBound(model).costs(new BitSet()).known();
    double onTop = new EveryStrategy(model).cheapest(now) - (known[0] + known[1]) / 2;
    double pair = new CausePair(model, known, 0, 1).minutes(EVEN, new BitSet())[0];
    assertThat(pair).isBetween(onTop * 0.97 - ROUNDING, onTop + ROUNDING);
  }

  /**
   * Two causes alike in every way, mends of 20 minutes that fail one time in two, no check, a yard
   * of 100 that searches for 60 when it is told the wrong one. Known, a cause costs 20 + 100 ÷ 2 =
   * 70. Not known: the first mend 20; in three of four cases it has not cured, and the second costs
   * 20 more; in two of the first four neither has, and the yard, told either, searches every other
   * time: 20 + 15 + (100 + 30) ÷ 2 = 100, which is 30 on top.
   */
  @Test
  void aMendThatFailsLeavesOpenWhetherItWasTheWrongOne() {
    MendEffort mend = new MendEffort(20, new BitSet(), 0.5, true);
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {1, 1}, List.of()),
            List.of(),
            List.of(mend, mend),
            new double[0],
            100,
            60);
    double[] known = new LowerBound(model).costs(new BitSet()).known();
    assertThat(known).containsExactly(70, 70);
    double pair = new CausePair(model, known, 0, 1).minutes(EVEN, new BitSet())[0];
    assertThat(pair).isCloseTo(30, within(0.5)).isLessThanOrEqualTo(30 + ROUNDING);
    assertThat(new EveryStrategy(model).cheapest(model.beginning()))
        .isCloseTo(100, within(ROUNDING));
  }

  /** More checks than are kept account of: they may be made again, which is never dearer. */
  @Property(tries = 20, seed = "20261130", edgeCases = EdgeCasesMode.NONE)
  void manyChecksStayBelowTheBestThatIsKnown(@ForAll @LongRange(min = 0) long seed) {
    EffortModel model = new RandomModels(seed).fullModel(3, 14, 2, AccessShape.ONE_EACH);
    double found = new Following(model, new Planner()).minutes();
    double thorough = minutes(LowerBound.thorough(model), model.beginning());
    assertThat(thorough).isBetween(minutes(new LowerBound(model), model.beginning()), found);
  }
}
