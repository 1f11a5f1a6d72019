package limberboard.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.List;
import limberboard.effort.Advice.Action;
import limberboard.effort.Advice.Option;
import limberboard.effort.EffortModel.CheckEffort;
import limberboard.effort.EffortModel.MendEffort;
import limberboard.effort.Questionnaire.Order;
import org.junit.jupiter.api.Test;

/** The rules that the planner is measured by do what they are said to do. */
class SimpleRulesTest {
  private static final double EXACT = 1e-9;

  /** Three causes of 50, 30 and 20 %, mends of 100, 30 and 10 min; the yard takes 1,000 min. */
  private static EffortModel model(boolean secondComesFirst) {
    double[][] vague = {{0.6, 0.5, 0.5}, {0.4, 0.5, 0.5}};
    double[][] telling = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    return new EffortModel(
        new AnswerModel(new double[] {0.5, 0.3, 0.2}, List.of(vague, telling)),
        List.of(
            new CheckEffort(2, new BitSet(), 0, false),
            new CheckEffort(5, new BitSet(), 0, secondComesFirst)),
        List.of(mend(100), mend(30), mend(10)),
        new double[0],
        1_000);
  }

  private static MendEffort mend(double minutes) {
    return new MendEffort(minutes, new BitSet(), 1, true);
  }

  private static double minutes(EffortModel model, Policy policy) {
    return new Following(model, policy).minutes();
  }

  @Test
  void theFilesOrderTriesMendsAsTheyStand() {
    assertThat(minutes(model(false), new FileOrder()))
        .isCloseTo(100 + 0.5 * 30 + 0.2 * 10, within(EXACT));
  }

  /** Chance per minute: 0.2 / 10, then 0.3 / 30, then 0.5 / 100. */
  @Test
  void mendsOnlyTriesTheMostPromisingFirst() {
    assertThat(minutes(model(false), new MendsOnly()))
        .isCloseTo(10 + 0.8 * 30 + 0.5 * 100, within(EXACT));
  }

  @Test
  void theFilesQuestionsComeAsTheyStandAndTheMostTellingCanComeFirst() {
    double known = 0.5 * 100 + 0.3 * 30 + 0.2 * 10;
    assertThat(minutes(model(false), new Questionnaire(Order.OF_THE_FILE, 0.8)))
        .isCloseTo(2 + 5 + known, within(EXACT));
    assertThat(minutes(model(false), new Questionnaire(Order.MOST_TELLING_FIRST, 0.8)))
        .isCloseTo(5 + known, within(EXACT));
  }

  @Test
  void whatSafetyAsksForComesFirstUnderEveryRule() {
    EffortModel model = model(true);
    for (Policy policy :
        List.of(
            new FileOrder(),
            new MendsOnly(),
            new Questionnaire(Order.OF_THE_FILE, 0.8),
            new OneStep(),
            new Planner())) {
      Option first = policy.advise(model, model.beginning()).best();
      assertThat(first.action()).isEqualTo(Action.CHECK);
      assertThat(first.index()).isEqualTo(1);
    }
  }

  /** Half a bit for a check that halves an even choice half of the time it is made. */
  @Test
  void tellsBitsOnlyWhereThereIsAnAnswer() {
    double[][] parts = {{1, 0}, {0, 1}};
    EffortModel model =
        new EffortModel(
            new AnswerModel(new double[] {0.5, 0.5}, List.<double[][]>of(parts)),
            List.of(new CheckEffort(1, new BitSet(), 0.5, false)),
            List.of(mend(10), mend(10)),
            new double[0],
            100);
    assertThat(Questionnaire.bits(model, new double[] {0.5, 0.5}, 0)).isCloseTo(0.5, within(EXACT));
  }

  /** Each rule leaves the yard for when it is cheaper than going on. */
  @Test
  void theYardIsCalledWhenItIsCheaper() {
    EffortModel dear =
        new EffortModel(
            new AnswerModel(new double[] {0.5, 0.5}, List.of()),
            List.of(),
            List.of(mend(500), mend(500)),
            new double[0],
            200,
            60);
    assertThat(minutes(dear, new FileOrder())).isCloseTo(200 + 0.5 * 60, within(EXACT));
    assertThat(minutes(dear, new MendsOnly())).isCloseTo(200 + 0.5 * 60, within(EXACT));
    assertThat(minutes(dear, new Planner())).isCloseTo(200 + 0.5 * 60, within(EXACT));
  }

  /** After a mend whose cure shows only later everything has been closed up again. */
  @Test
  void accessIsPaidAgainAfterAMendThatShowsOnlyLater() {
    BitSet access = new BitSet();
    access.set(0);
    for (boolean atOnce : new boolean[] {true, false}) {
      EffortModel model =
          new EffortModel(
              new AnswerModel(new double[] {0.5, 0.5}, List.of()),
              List.of(),
              List.of(
                  new MendEffort(10, access, 1, true, atOnce, true),
                  new MendEffort(10, access, 1, true, atOnce, true)),
              new double[] {20},
              1_000);
      double second = atOnce ? 10 : 30;
      assertThat(minutes(model, new Planner())).isCloseTo(30 + 0.5 * second, within(EXACT));
      assertThat(minutes(model, new MendsOnly())).isCloseTo(30 + 0.5 * second, within(EXACT));
    }
  }
}
