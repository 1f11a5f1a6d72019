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
    Ranked seal = sure.ranking().get(0);
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
    List<Ranked> before = sure.ranking();
    List<Ranked> after = failed.ranking();

    assertThat(chance(after, "bowsprit-seal")).isLessThan(0.5);
    assertThat(chance(after, "stem-fitting") / chance(after, "tank"))
        .isCloseTo(chance(before, "stem-fitting") / chance(before, "tank"), within(1e-9));
    assertThat(failed.alternatives())
        .extracting(Trace.Alternative::step)
        .noneMatch(
            step -> step instanceof DoMend mend && mend.cause().id().equals("bowsprit-seal"));
    assertThat(failed.answers()).isEqualTo(sure.answers());
  }

  @Test
  void aMendThatWasHardlyEverRightSaysLittle() {
    Trace unlikely = trace.answer("taste", "salt").answer("seal-look", "split");
    assertThat(unlikely.mendTried("stem-fitting").secondFault()).isEmpty();
  }

  private static double chance(List<Ranked> ranking, String id) {
    return ranking.stream()
        .filter(ranked -> ranked.cause().id().equals(id))
        .findFirst()
        .orElseThrow()
        .chance();
  }
}
