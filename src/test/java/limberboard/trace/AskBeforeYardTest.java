package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.trace.Advice.Action;
import limberboard.trace.Advice.Grounds;
import limberboard.trace.Advice.Option;
import limberboard.trace.EffortModel.CheckEffort;
import limberboard.trace.EffortModel.MendEffort;
import org.junit.jupiter.api.Test;

class AskBeforeYardTest {
  private final Policy policy = new AskBeforeYard(new OneStep());

  @Test
  void asksTheCheapChecksThatTellMostPerMinuteFirst() {
    EffortModel model = yardOnly(List.of(check(20, 0), check(5, 0), check(31, 0), check(1, 1)));
    List<Option> options = policy.advise(model, model.beginning()).options();
    assertThat(options.get(0).index()).isEqualTo(1);
    assertThat(options.get(1).index()).isEqualTo(0);
    assertThat(options.get(2).action()).isEqualTo(Action.YARD);
    assertThat(options)
        .extracting(Option::grounds)
        .startsWith(Grounds.TELL_THE_YARD, Grounds.TELL_THE_YARD, Grounds.EFFORT);
    assertThat(options).hasSize(5);
  }

  @Test
  void handsOverOnceACauseIsSettled() {
    EffortModel model = yardOnly(List.of(check(5, 0)));
    Situation settled =
        new Situation(new double[] {0.85, 0.15}, new BitSet(), new BitSet(), new BitSet());
    assertThat(policy.advise(model, settled).best().action()).isEqualTo(Action.YARD);
  }

  @Test
  void leavesAnyOtherAdviceAsItIs() {
    EffortModel byOwner =
        new EffortModel(
            new AnswerModel(new double[] {0.6, 0.4}, List.of()),
            List.of(),
            List.of(
                new MendEffort(10, new BitSet(), 1, true),
                new MendEffort(240, new BitSet(), 1, false)),
            new double[0],
            240);
    assertThat(policy.advise(byOwner, byOwner.beginning()))
        .isEqualTo(new OneStep().advise(byOwner, byOwner.beginning()));
  }

  /** A check that is always right about two even causes tells one bit; C. E. Shannon, 1948. */
  @Test
  void measuresWhatACheckTellsInBits() {
    double[][] sure = {{1, 0}, {0, 1}};
    double[][] half = {{0.5, 0.5}, {0.5, 0.5}};
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {1, 1}, List.of(sure, half, sure)),
            List.of(check(1, 0), check(1, 0), check(1, 0.25)),
            List.of(
                new MendEffort(1, new BitSet(), 1, false),
                new MendEffort(1, new BitSet(), 1, false)),
            new double[0],
            240);
    double[] even = {0.5, 0.5};
    assertThat(AskBeforeYard.bits(model, even, 0)).isCloseTo(1, within(1e-12));
    assertThat(AskBeforeYard.bits(model, even, 1)).isCloseTo(0, within(1e-12));
    assertThat(AskBeforeYard.bits(model, even, 2)).isCloseTo(0.75, within(1e-12));
  }

  private static CheckEffort check(double minutes, double cantTell) {
    return new CheckEffort(minutes, new BitSet(), cantTell, false);
  }

  private static EffortModel yardOnly(List<CheckEffort> checks) {
    double[][] table = {{0.9, 0.1}, {0.1, 0.9}};
    MendEffort yard = new MendEffort(240, new BitSet(), 1, false);
    return new EffortModel(
        new AnswerModel(new double[] {1, 1}, checks.stream().map(unused -> table).toList()),
        checks,
        List.of(yard, yard),
        new double[0],
        240);
  }
}
