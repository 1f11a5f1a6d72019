package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.RandomModels.AccessShape;
import org.junit.jupiter.api.Test;

/** Problems that one step ahead gets wrong, worked out by hand. */
class PlannerTest {
  private static final double EXACT = 1e-9;

  /**
   * Eight even causes and a check for each of three bits. What is told to the yard is then right
   * one time in 8, 4, 2 or 1: with a search of 100 the checks save 12.5, 25 and 50, and take 20
   * each.
   */
  @Test
  void asksThreeChecksOfWhichOnlyAllTogetherPay() {
    SmallProblem problem = new SmallProblem(1, 1, 1, 1, 1, 1, 1, 1);
    for (int bit = 0; bit < 3; bit++) {
      double[] yes = new double[8];
      double[] no = new double[8];
      for (int cause = 0; cause < 8; cause++) {
        yes[cause] = cause >> bit & 1;
        no[cause] = 1 - yes[cause];
      }
      problem.check(20, yes, no);
    }
    EffortModel model = problem.model(200, 100);

    assertThat(new OneStep().advise(model, model.beginning()).best().action())
        .isEqualTo(Action.YARD);
    Advice advice = new Planner().advise(model, model.beginning());
    assertThat(advice.best().action()).isEqualTo(Action.CHECK);
    assertThat(advice.best().expectedMinutes()).isCloseTo(200 + 60, within(EXACT));
    assertThat(advice.gap()).isCloseTo(0, within(EXACT));
  }

  /**
   * Trying the first mend does not pay (55 + half of 100), but it opens what the check lies behind
   * (55 + half of 5 + 30 + 50), which comes to less than the check first (55 + a quarter of 60 +
   * three quarters of 5 and a third of 100).
   */
  @Test
  void mendsFirstWhatPaysOnlyWithTheCheckThatFollows() {
    BitSet hatch = new BitSet();
    hatch.set(0);
    EffortModel model =
        new SmallProblem(0.5, 0.25, 0.25)
            .access(50)
            .mend(0, 5, 0)
            .mend(1, 60)
            .check(
                new CheckEffort(5, hatch, 0, false), new double[] {0, 1, 0}, new double[] {1, 0, 1})
            .model(100);

    Option best = new Planner().advise(model, model.beginning()).best();

    assertThat(best.action()).isEqualTo(Action.MEND);
    assertThat(best.expectedMinutes()).isCloseTo(55 + 0.5 * 85, within(EXACT));
    assertThat(new Following(model, new Planner()).minutes())
        .isCloseTo(55 + 0.5 * 85, within(EXACT));
  }

  /**
   * A check of one minute that tells nothing but has to come first; then one of twenty that pays.
   */
  @Test
  void looksBeyondWhatSafetyDemands() {
    EffortModel model =
        new SmallProblem(0.5, 0.5)
            .mend(0, 60)
            .mend(1, 60)
            .check(new CheckEffort(1, new BitSet(), 0, true), new double[] {1, 1})
            .check(20, new double[] {1, 0}, new double[] {0, 1})
            .model(1_000);

    Advice advice = new Planner().advise(model, model.beginning());

    assertThat(advice.best().index()).isZero();
    assertThat(advice.best().expectedMinutes()).isCloseTo(1 + 20 + 60, within(EXACT));
    assertThat(advice.atLeast()).isCloseTo(1 + 20 + 60, within(EXACT));
  }

  /** Otherwise the random problems would be too easy to show anything. */
  @Test
  void savesMinutesOnSomeOfTheRandomProblems() {
    int dearer = 0;
    for (int seed = 0; seed < 300; seed++) {
      EffortModel model = new RandomModels(seed).fullModel(4, 3, 2, AccessShape.ONE_EACH);
      double planned = new Following(model, new Planner()).minutes();
      double oneStep = new Following(model, new OneStep()).minutes();
      assertThat(planned).isLessThanOrEqualTo(oneStep + EXACT);
      dearer += oneStep > planned * 1.005 ? 1 : 0;
    }
    assertThat(dearer).isGreaterThan(15);
  }
}
