package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import limberboard.trace.Advice.Action;
import limberboard.trace.Advice.Grounds;
import limberboard.trace.Advice.Option;
import limberboard.trace.Articles.Fitted;
import limberboard.trace.Simulation.Outcome;
import org.junit.jupiter.api.Test;

/**
 * What the policies cost on the repository's own symptoms and boats, simulated. The figures in
 * {@code docs/tracing.md} come from this simulation; what is asserted is what the text claims.
 */
class PoliciesOnArticlesTest {
  private static final int FAULTS = 40;
  private static final long SEED = 42;

  /** Averages over all symptoms and boats. */
  private record Average(double minutes, double checks, double named) {}

  @Test
  void checkingPaysAndAskingBeforeTheYardNamesMoreCausesForAFewMinutes() throws IOException {
    List<Fitted> fitted = Articles.fitted(Articles.workspace());
    Average noChecks = average(fitted, PoliciesOnArticlesTest::mendsOnly);
    Average oneStep = average(fitted, new OneStep());
    Average asking = average(fitted, new AskBeforeYard(new OneStep()));

    assertThat(noChecks.checks()).isZero();
    assertThat(oneStep.minutes()).isLessThan(noChecks.minutes() * 0.85);
    assertThat(oneStep.named()).isGreaterThan(noChecks.named() + 0.2);
    assertThat(asking.minutes()).isLessThan(oneStep.minutes() * 1.1);
    assertThat(asking.named()).isGreaterThan(oneStep.named() + 0.03);
    assertThat(asking.checks()).isLessThan(6);
  }

  private static Average average(List<Fitted> fitted, Policy policy) {
    List<Outcome> outcomes =
        fitted.stream()
            .flatMap(
                one -> {
                  Simulation simulation = new Simulation(one.fault(), policy, new Random(SEED));
                  return IntStream.range(0, FAULTS).mapToObj(i -> simulation.once());
                })
            .toList();
    return new Average(
        outcomes.stream().mapToDouble(Outcome::minutes).average().orElseThrow(),
        outcomes.stream().mapToInt(Outcome::checks).average().orElseThrow(),
        outcomes.stream().mapToInt(one -> one.named() ? 1 : 0).average().orElseThrow());
  }

  /** The order of mends, without any check. */
  private static Advice mendsOnly(EffortModel model, Situation now) {
    MendOrder order = new MendOrder(model);
    double minutes = order.minutes(now.chances(), now.open(), now.tried());
    if (order.order().isEmpty()) {
      double yard = model.yardMinutes();
      return new Advice(List.of(new Option(Action.YARD, 0, yard, yard, Grounds.EFFORT)));
    }
    int first = order.order().get(0);
    double cost =
        model.mends().get(first).minutes()
            + model.accessMinutes(model.mends().get(first).access(), now.open());
    return new Advice(List.of(new Option(Action.MEND, first, cost, minutes, Grounds.EFFORT)));
  }
}
