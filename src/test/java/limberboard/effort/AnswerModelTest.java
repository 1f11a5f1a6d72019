package limberboard.effort;

import static limberboard.effort.AnswerModel.NOT_ANSWERED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerModelTest {
  private static final double EXACT = 1e-12;

  /**
   * E. T. Jaynes, <i>Probability Theory: The Logic of Science</i>, 2003, chapter 4, from memory: a
   * box of parts comes from a machine with one bad part in three or from one with one in six, the
   * first at −10 dB before the test. Each bad part adds 3.0 dB, each good one takes away 0.97 dB.
   */
  @Test
  void followsTheTextbooksTestOfPartsStepByStep() {
    double[][] drawn = {{1 / 3.0, 1 / 6.0}, {2 / 3.0, 5 / 6.0}};
    AnswerModel model = new AnswerModel(new double[] {1, 10}, List.of(drawn, drawn, drawn));
    int bad = 0;
    int good = 1;

    double before = decibels(model.chances(new int[] {NOT_ANSWERED, NOT_ANSWERED, NOT_ANSWERED}));
    double one = decibels(model.chances(new int[] {bad, NOT_ANSWERED, NOT_ANSWERED}));
    double two = decibels(model.chances(new int[] {bad, bad, NOT_ANSWERED}));
    double three = decibels(model.chances(new int[] {bad, bad, good}));

    assertThat(before).isCloseTo(-10, within(EXACT));
    assertThat(one - before).isCloseTo(3.0, within(0.05));
    assertThat(two - one).isCloseTo(3.0, within(0.05));
    assertThat(three - two).isCloseTo(-0.97, within(0.005));
  }

  private static double decibels(double[] chances) {
    return 10 * Math.log10(chances[0] / chances[1]);
  }

  /**
   * J. Pearl, <i>Probabilistic Reasoning in Intelligent Systems</i>, 1988, section 4.2, from
   * memory: three suspects at 0.8, 0.1, 0.1; a finding of weight 0.75 : 0.61 : 0.54 makes them
   * 0.840, 0.085, 0.076; an alibi that brings the first from 0.8 to 0.28 against 0.36 each makes
   * them 0.337, 0.352, 0.311.
   */
  @Test
  void followsTheTextbooksThreeSuspects() {
    double[][] finding = {{0.75, 0.61, 0.54}, {0.25, 0.39, 0.46}};
    double alibi = (0.28 / 0.8) / (0.36 / 0.1);
    double[][] heard = {{alibi, 1, 1}, {1 - alibi, 0, 0}};
    AnswerModel model = new AnswerModel(new double[] {0.8, 0.1, 0.1}, List.of(finding, heard));

    assertThat(model.chances(new int[] {0, NOT_ANSWERED}))
        .containsExactly(new double[] {0.840, 0.085, 0.076}, within(0.001));
    assertThat(model.chances(new int[] {0, 0}))
        .containsExactly(new double[] {0.337, 0.352, 0.311}, within(0.001));
  }

  @Test
  void rulesOutACauseThatNeverGivesTheAnswer() {
    AnswerModel model =
        new AnswerModel(
            new double[] {1, 1, 1}, List.<double[][]>of(new double[][] {{0, 0.5, 1}, {1, 0.5, 0}}));
    assertThat(model.chances(new int[] {0}))
        .containsExactly(new double[] {0, 1 / 3.0, 2 / 3.0}, within(EXACT));
  }

  @Test
  void leavesAllToTheOneCauseThatIsStillPossible() {
    double[][] onlyLast = {{0, 0, 0.5}, {1, 1, 0.5}};
    AnswerModel model = new AnswerModel(new double[] {10, 10, 1}, List.<double[][]>of(onlyLast));
    assertThat(model.chances(new int[] {0})).containsExactly(0, 0, 1);
  }

  @Test
  void keepsThePriorsWhenTheAnswersAreImpossible() {
    double[][] sure = {{1, 1}, {0, 0}};
    AnswerModel model = new AnswerModel(new double[] {3, 1}, List.<double[][]>of(sure));
    assertThat(model.chances(new int[] {1})).containsExactly(0.75, 0.25);
    assertThat(model.logEvidence(new int[] {1})).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void givesTheAnswersOwnProbability() {
    AnswerModel model =
        new AnswerModel(
            new double[] {0.5, 0.5}, List.<double[][]>of(new double[][] {{0.9, 0.2}, {0.1, 0.8}}));
    assertThat(Math.exp(model.logEvidence(new int[] {0}))).isCloseTo(0.55, within(EXACT));
    assertThat(model.logEvidence(new int[] {NOT_ANSWERED})).isCloseTo(0, within(EXACT));
  }

  @Test
  void standsThousandsOfAnswersThatWouldVanishAsProducts() {
    double[][] table = {{1e-3, 2e-3}, {1 - 1e-3, 1 - 2e-3}};
    AnswerModel model = new AnswerModel(new double[] {1, 1}, Collections.nCopies(5_000, table));
    int[] unlikely = new int[5_000];
    double[] chances = model.chances(unlikely);
    assertThat(chances[0] + chances[1]).isCloseTo(1, within(EXACT));
    assertThat(chances[1]).isGreaterThan(0.999);
    assertThat(model.logEvidence(unlikely)).isFinite();
  }

  @Test
  void refusesTablesThatAreNotProbabilities() {
    double[] even = {1, 1};
    assertThatThrownBy(
            () -> new AnswerModel(even, List.<double[][]>of(new double[][] {{0.5, 0.5}})))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("sum to 1");
    assertThatThrownBy(
            () ->
                new AnswerModel(
                    even, List.<double[][]>of(new double[][] {{1.5, 0.5}, {-0.5, 0.5}})))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 or more");
    double[] none = {0, 0};
    assertThatThrownBy(() -> new AnswerModel(none, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    double[] unknown = {Double.NaN, 1};
    assertThatThrownBy(() -> new AnswerModel(unknown, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void doesNotChangeWhenItsInputsDo() {
    double[] priors = {1, 1};
    double[][] table = {{0.9, 0.2}, {0.1, 0.8}};
    AnswerModel model = new AnswerModel(priors, List.<double[][]>of(table));
    priors[0] = 99;
    Arrays.fill(table[0], 0);
    assertThat(model.prior(0)).isEqualTo(0.5);
    assertThat(model.likelihood(0, 0, 0)).isEqualTo(0.9);
  }

  @Test
  void aCauseMadeTwiceAsLikelyLeavesTheOthersAsTheyWereAmongThemselves() {
    AnswerModel model = new AnswerModel(new double[] {1, 2, 1}, List.of());
    AnswerModel changed = model.withPrior(0, 2);
    assertThat(changed.prior(0)).isCloseTo(0.4, within(EXACT));
    assertThat(changed.prior(1)).isCloseTo(0.4, within(EXACT));
    assertThat(changed.prior(2)).isCloseTo(0.2, within(EXACT));
    assertThat(model.prior(0)).isEqualTo(0.25);
  }

  /** What is left to 1 is shared as before: 0.3 and 0.1 as 3 to 1; nothing at all, equally. */
  @Test
  void aLikelihoodIsChangedUnderOneCauseOnly() {
    double[][] table = {{0.6, 1}, {0.3, 0}, {0.1, 0}};
    double[] even = {1, 1};
    AnswerModel model = new AnswerModel(even, List.of(table, table));
    AnswerModel first = model.withLikelihood(1, 0, 0, 0.2);
    assertThat(first.likelihood(1, 0, 0)).isCloseTo(0.2, within(EXACT));
    assertThat(first.likelihood(1, 1, 0)).isCloseTo(0.6, within(EXACT));
    assertThat(first.likelihood(1, 2, 0)).isCloseTo(0.2, within(EXACT));
    assertThat(first.likelihood(1, 0, 1)).isEqualTo(1);
    assertThat(first.likelihood(0, 0, 0)).isEqualTo(0.6);
    AnswerModel second = model.withLikelihood(0, 0, 1, 0.5);
    assertThat(second.likelihood(0, 1, 1)).isCloseTo(0.25, within(EXACT));
    assertThat(second.likelihood(0, 2, 1)).isCloseTo(0.25, within(EXACT));
    assertThat(model.likelihood(0, 0, 1)).isEqualTo(1);
  }
}
