package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import limberboard.trace.NextStep.DoMend;
import org.junit.jupiter.api.Test;

class TwoFaultsTest {
  private final Trace trace = Trace.begin(Leak.onKnot());

  @Test
  void saysNothingWithoutASign() {
    assertThat(trace.secondFault()).isEmpty();
    assertThat(trace.answer("taste", "salt").answer("seal-look", "split").secondFault()).isEmpty();
  }

  /**
   * Before the mend the seal stands at p, and mending it cures c of ten times. Of what it should
   * have cured a fifth is a second fault: 0.2·p·c beside 1 − p·c for one fault.
   */
  @Test
  void aSureCauseWhoseMendDidNotCureSpeaksForASecondFault() {
    Trace sure = trace.answer("taste", "salt").answer("seal-look", "split");
    RankedCause seal = sure.ranking().get(0);
    double cured = seal.chance() * seal.cause().cures();
    double second = 0.2 * cured / (1 - cured + 0.2 * cured);

    Trace failed = sure.mendTried("bowsprit-seal");

    assertThat(failed.secondFault().orElseThrow().chance()).isCloseTo(second, within(1e-9));
    assertThat(failed.secondFault().orElseThrow().text())
        .startsWith("If “The bowsprit seal no longer wipes the tube” was mended well")
        .contains("a second fault");
  }

  @Test
  void theMendedCauseDropsOutAndWhatWasLearntStays() {
    Trace sure = trace.answer("taste", "salt").answer("seal-look", "split");
    Trace failed = sure.mendTried("bowsprit-seal");
    List<RankedCause> before = sure.ranking();
    List<RankedCause> after = failed.ranking();

    assertThat(chance(after, "bowsprit-seal")).isLessThan(0.5);
    assertThat(chance(after, "stem-fitting") / chance(after, "tank"))
        .isCloseTo(chance(before, "stem-fitting") / chance(before, "tank"), within(1e-9));
    assertThat(failed.alternatives())
        .extracting(Alternative::step)
        .noneMatch(
            step -> step instanceof DoMend mend && mend.cause().id().equals("bowsprit-seal"));
    assertThat(failed.answers()).isEqualTo(sure.answers());
  }

  @Test
  void aMendThatWasHardlyEverRightSaysLittle() {
    Trace unlikely = trace.answer("taste", "salt").answer("seal-look", "split");
    assertThat(unlikely.mendTried("stem-fitting").secondFault()).isEmpty();
  }

  /**
   * Reckoned by hand for "split", "drips-from-bolt" and "loses", which point to three causes (the
   * boat's weights: seal 12, stem 3, condensation 1, tank 2, something else 0.6 of 18.6). One
   * fault: Σ p·Π P(answer). Two: over the pairs of listed causes p·q·Π (mean of the two P(answer)),
   * divided by the sum of p·q; a fifth of all faults are pairs.
   */
  @Test
  void answersThatPointToSeveralCausesNameThePairThatFitsBest() {
    Trace clashing =
        trace
            .answer("seal-look", "split")
            .answer("hose", "drips-from-bolt")
            .answer("tank-level", "loses");
    double[] weight = {12, 3, 1, 2};
    double[] split = {0.5, 0.04, 0.04, 0.04};
    double[] drips = {0.05, 0.95, 0.05, 0.05};
    double[] loses = {0.02, 0.02, 0.02, 0.95};
    double one = 0.6 / 3 / 2 / 2 / 18.6;
    double two = 0;
    double pairs = 0;
    for (int i = 0; i < weight.length; i++) {
      one += weight[i] * split[i] * drips[i] * loses[i] / 18.6;
      for (int j = 0; j < i; j++) {
        double pair = weight[i] * weight[j];
        double splits = (split[i] + split[j]) / 2;
        pairs += pair;
        two += pair * splits * (drips[i] + drips[j]) / 2 * (loses[i] + loses[j]) / 2;
      }
    }
    double expected = 0.2 * two / pairs / (0.2 * two / pairs + 0.8 * one);

    SecondFault second = clashing.secondFault().orElseThrow();

    assertThat(second.chance()).isCloseTo(expected, within(1e-9)).isBetween(0.2, 0.6);
    assertThat(second.text())
        .startsWith("It may be two faults at once: that is ")
        .contains("“The bowsprit seal no longer wipes the tube” and “The water tank leaks”");
    assertThat(clashing.takeBack("tank-level").takeBack("hose").secondFault()).isEmpty();
  }

  private static double chance(List<RankedCause> ranking, String id) {
    return ranking.stream()
        .filter(ranked -> ranked.cause().id().equals(id))
        .findFirst()
        .orElseThrow()
        .chance();
  }
}
