package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.Advice.Option;
import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Regret against every strategy there is, on small random faults. */
class RegretsTest {
  private static final double CLOSE = 1e-6;

  @Property(tries = 1_000, seed = "20261129", edgeCases = EdgeCasesMode.NONE)
  void isWhatEveryStrategyThereIsComesTo(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 2, max = 4) int causes,
      @ForAll @IntRange(min = 1, max = 3) int checks,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, 2, shape);
    Situation now = model.beginning();
    Regrets regrets = new Regrets(model, new Planner(Long.MAX_VALUE));
    EveryStrategy every = new EveryStrategy(model);
    Onward onward = new Onward(model);
    double cheapest = every.cheapest(now);

    assertThat(regrets.expected(now)).isCloseTo(cheapest, within(CLOSE));
    for (int check = 0; check < checks; check++) {
      double after = model.checkMinutes(check, now.open());
      after += every(every, onward.ofCheck(now, check));
      assertThat(regrets.check(now, check).regret())
          .isCloseTo(Math.max(0, after - cheapest), within(CLOSE));
    }
    for (int cause = 0; cause < causes; cause++) {
      double after = model.mendMinutes(cause, now.open());
      after += every(every, onward.ofMend(now, cause));
      assertThat(regrets.mend(now, cause).regret())
          .isCloseTo(Math.max(0, after - cheapest), within(CLOSE));
    }
    for (int access = 0; access < 2; access++) {
      BitSet one = new BitSet();
      one.set(access);
      double after = model.accessMinutes(one, now.open());
      after += every.cheapest(onward.opened(now, access));
      assertThat(regrets.open(now, access).regret())
          .isCloseTo(Math.max(0, after - cheapest), within(CLOSE));
    }
  }

  private static double every(EveryStrategy every, List<Onward.Way> ways) {
    return ways.stream().mapToDouble(way -> way.chance() * every.cheapest(way.then())).sum();
  }

  /** The performance difference lemma, by going through everything that can happen. */
  @Property(tries = 300, seed = "20261129", edgeCases = EdgeCasesMode.NONE)
  void comesOnAverageToWhatAWayOfPlayingCostsMore(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 2, max = 4) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, 2, shape);
    Policy playing = new Questionnaire(Questionnaire.Order.OF_THE_FILE, 0.8);
    Regrets regrets = new Regrets(model, new Planner(Long.MAX_VALUE));
    double best = new EveryStrategy(model).cheapest(model.beginning());

    double more = expectedRegret(model, regrets, playing, model.beginning());

    assertThat(best + more)
        .isCloseTo(new Following(model, playing).minutes(), within(CLOSE * (1 + best)));
  }

  private static double expectedRegret(
      EffortModel model, Regrets regrets, Policy playing, Situation now) {
    Option option = playing.advise(model, now).best();
    Onward onward = new Onward(model);
    return switch (option.action()) {
      case YARD -> regrets.yard(now, regrets.likeliest(now)).regret();
      case CHECK ->
          regrets.check(now, option.index()).regret()
              + further(model, regrets, playing, onward.ofCheck(now, option.index()));
      case MEND ->
          regrets.mend(now, option.index()).regret()
              + further(model, regrets, playing, onward.ofMend(now, option.index()));
    };
  }

  private static double further(
      EffortModel model, Regrets regrets, Policy playing, List<Onward.Way> ways) {
    return ways.stream()
        .mapToDouble(way -> way.chance() * expectedRegret(model, regrets, playing, way.then()))
        .sum();
  }

  @Property(tries = 300, seed = "20261129", edgeCases = EdgeCasesMode.NONE)
  void isNothingForThePlannersOwnChoiceHoweverLittleItMayWork(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 2, max = 4) int causes,
      @ForAll @IntRange(min = 1, max = 3) int checks,
      @ForAll @IntRange(min = 0, max = 300) int work,
      @ForAll AccessShape shape) {
    EffortModel model = new RandomModels(seed).fullModel(causes, checks, 2, shape);
    Situation now = model.beginning();
    Regrets regrets = new Regrets(model, new Planner(work));
    Option best = regrets.advice(now).best();

    Regrets.Judged judged =
        switch (best.action()) {
          case CHECK -> regrets.check(now, best.index());
          case MEND -> regrets.mend(now, best.index());
          case YARD -> regrets.yard(now, regrets.likeliest(now));
        };

    assertThat(judged.regret()).isCloseTo(0, within(CLOSE));
    assertThat(judged.bestMinutes() - judged.doubt())
        .isLessThanOrEqualTo(new EveryStrategy(model).cheapest(now) + CLOSE);
  }
}
