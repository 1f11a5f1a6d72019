package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Grounds;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.RandomModels.AccessShape;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class OneStepTest {
  private static final double EXACT = 1e-9;

  /** Following the advice to the end costs no more than what it promised, nor than no check. */
  @Property(tries = 150, seed = "1995", edgeCases = EdgeCasesMode.NONE)
  void isNeverWorseThanNoCheckAtAll(
      @ForAll @LongRange(min = 0) long seed,
      @ForAll @IntRange(min = 2, max = 5) int causes,
      @ForAll @IntRange(min = 0, max = 3) int checks,
      @ForAll @IntRange(min = 0, max = 3) int access) {
    EffortModel model = new RandomModels(seed).model(causes, checks, access, AccessShape.ONE_EACH);
    double noCheck =
        new MendOrder(model).minutes(model.beginning().chances(), new BitSet(), new BitSet());
    double promised = new OneStep().advise(model, model.beginning()).best().expectedMinutes();
    double followed = new Following(model, new OneStep()).minutes();
    assertThat(promised).isLessThanOrEqualTo(noCheck + EXACT);
    assertThat(followed).isLessThanOrEqualTo(promised + EXACT);
  }

  /** With a hundred small problems, some are worth checking and some are not. */
  @Test
  void savesMinutesOnManyProblems() {
    int saved = 0;
    for (int seed = 0; seed < 100; seed++) {
      EffortModel model = new RandomModels(seed).model(5, 3, 2, AccessShape.ONE_EACH);
      double noCheck =
          new MendOrder(model).minutes(model.beginning().chances(), new BitSet(), new BitSet());
      saved += new Following(model, new OneStep()).minutes() < noCheck - 1 ? 1 : 0;
    }
    assertThat(saved).isBetween(20, 99);
  }

  /** Two causes, one check that parts them, worked out by hand. */
  @Test
  void weighsACheckByItsCostAndTheMendsAfterIt() {
    EffortModel model = twoCauses(6, 0.1, false, new BitSet());
    double noCheck = 60 + 0.5 * 60;
    double certain = 60 + 0.1 * 60;
    double checkFirst = 6 + 0.9 * certain + 0.1 * noCheck;

    List<Option> options = new OneStep().advise(model, model.beginning()).options();

    assertThat(options.get(0).action()).isEqualTo(Action.CHECK);
    assertThat(options.get(0).minutes()).isEqualTo(6);
    assertThat(options.get(0).expectedMinutes()).isCloseTo(checkFirst, within(EXACT));
    assertThat(options.get(1).action()).isEqualTo(Action.MEND);
    assertThat(options.get(1).expectedMinutes()).isCloseTo(noCheck, within(EXACT));
    assertThat(options.get(options.size() - 1).action()).isEqualTo(Action.YARD);
    assertThat(options).extracting(Option::grounds).containsOnly(Grounds.EFFORT);
  }

  @Test
  void doesNotAskWhatCostsMoreThanItSaves() {
    EffortModel model = twoCauses(25, 0.1, false, new BitSet());
    assertThat(new OneStep().advise(model, model.beginning()).best().action())
        .isEqualTo(Action.MEND);
  }

  @Test
  void doesNotAskWhatTellsNothing() {
    EffortModel model = twoCauses(0, 1, false, new BitSet());
    assertThat(new OneStep().advise(model, model.beginning()).best().action())
        .isEqualTo(Action.MEND);
  }

  @Test
  void asksWhatSafetyDemandsWhateverItCosts() {
    EffortModel model = twoCauses(500, 0.1, true, new BitSet());
    Option best = new OneStep().advise(model, model.beginning()).best();
    assertThat(best.action()).isEqualTo(Action.CHECK);
    assertThat(best.grounds()).isEqualTo(Grounds.SAFETY);
  }

  @Test
  void doesNotAskAgain() {
    EffortModel model = twoCauses(1, 0.1, true, new BitSet());
    BitSet asked = new BitSet();
    asked.set(0);
    Situation now = new Situation(new double[] {0.5, 0.5}, new BitSet(), asked, new BitSet());
    assertThat(new OneStep().advise(model, now).options())
        .extracting(Option::action)
        .doesNotContain(Action.CHECK);
  }

  @Test
  void countsAccessOnceWithTheStepThatOpensIt() {
    BitSet hatch = new BitSet();
    hatch.set(0);
    EffortModel model = twoCauses(6, 0, false, hatch);
    Option closed = checkOf(new OneStep().advise(model, model.beginning()));
    Situation opened = new Situation(new double[] {0.5, 0.5}, hatch, new BitSet(), new BitSet());
    Option open = checkOf(new OneStep().advise(model, opened));
    assertThat(closed.minutes()).isEqualTo(6 + 20);
    assertThat(open.minutes()).isEqualTo(6);
    assertThat(closed.expectedMinutes() - open.expectedMinutes()).isCloseTo(20, within(EXACT));
  }

  private static Option checkOf(Advice advice) {
    return advice.options().stream()
        .filter(option -> option.action() == Action.CHECK)
        .findFirst()
        .orElseThrow();
  }

  /** Two even causes, each mended in an hour, and a check that is right nine times in ten. */
  private static EffortModel twoCauses(
      double minutes, double cantTell, boolean comesFirst, BitSet access) {
    double[][] table = {{0.9, 0.1}, {0.1, 0.9}};
    return new EffortModel(
        new AnswerModel(new double[] {1, 1}, List.<double[][]>of(table)),
        List.of(new CheckEffort(minutes, access, cantTell, comesFirst)),
        List.of(
            new MendEffort(60, new BitSet(), 1, true), new MendEffort(60, new BitSet(), 1, true)),
        new double[] {20},
        1_000);
  }

  @Test
  void keepsThePagesOrderBetweenEquals() {
    double[][] table = {{0.9, 0.1}, {0.1, 0.9}};
    double[][] mirrored = {{0.1, 0.9}, {0.9, 0.1}};
    CheckEffort effort = new CheckEffort(6, new BitSet(), 0, false);
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {1, 1}, List.of(table, mirrored, table)),
            List.of(effort, effort, effort),
            List.of(
                new MendEffort(60, new BitSet(), 1, true),
                new MendEffort(60, new BitSet(), 1, true)),
            new double[0],
            1_000);
    assertThat(new OneStep().advise(model, model.beginning()).options())
        .filteredOn(option -> option.action() == Action.CHECK)
        .extracting(Option::index)
        .containsExactly(0, 1, 2);
  }
}
