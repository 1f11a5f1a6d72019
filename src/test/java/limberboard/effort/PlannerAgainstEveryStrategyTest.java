package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** The planner against every strategy there is, on small random problems. */
class PlannerAgainstEveryStrategyTest {
  private static final double CLOSE = 1e-6;

  @Property(tries = 3_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void findsTheCheapestStrategyAndProvesIt(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll @IntRange(min = 0, max = 3) int access,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, access, shape);
    assertCheapestAndProven(model, model.beginning());
  }

  @Property(tries = 1_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void findsItFromTheMiddleOfATrace(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll AccessShape shape) {
    RandomModels random = new RandomModels(seed);
    EffortModel model = random.fullModel(causes, checks, 3, shape);
    assertCheapestAndProven(model, random.situation(model));
  }

  private static void assertCheapestAndProven(EffortModel model, Situation now) {
    double cheapest = new EveryStrategy(model).cheapest(now);

    Advice advice = new Planner(Long.MAX_VALUE).advise(model, now);

    assertThat(advice.best().expectedMinutes()).isCloseTo(cheapest, within(CLOSE));
    assertThat(advice.atLeast()).isCloseTo(cheapest, within(CLOSE));
  }

  @Property(tries = 1_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void costsWhatItPromisesWhenFollowed(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll @IntRange(min = 0, max = 3) int access,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, access, shape);
    double cheapest = new EveryStrategy(model).cheapest(model.beginning());

    double followed = new Following(model, new Planner(Long.MAX_VALUE)).minutes();

    assertThat(followed).isCloseTo(cheapest, within(CLOSE));
  }

  @Property(tries = 1_000, seed = "20261125", edgeCases = EdgeCasesMode.NONE)
  void keepsTheCheapestBetweenItsTwoFiguresHoweverLittleItMayWork(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 1, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll @IntRange(min = 0, max = 3) int access,
      @ForAll @IntRange(min = 0, max = 300) int work,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, access, shape);
    double cheapest = new EveryStrategy(model).cheapest(model.beginning());

    Advice advice = new Planner(work).advise(model, model.beginning());

    assertThat(advice.atLeast()).isLessThanOrEqualTo(cheapest + CLOSE);
    assertThat(advice.best().expectedMinutes()).isGreaterThanOrEqualTo(cheapest - CLOSE);
  }
}
