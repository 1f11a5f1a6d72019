package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import limberboard.effort.Advice;
import limberboard.effort.Policy;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.NextStep.DoCheck;
import limberboard.trace.NextStep.DoMend;
import limberboard.trace.TrailStep.MendFailed;
import org.junit.jupiter.api.Test;

/** Following the symptom in {@code leak} on Knot; the numbers are worked out by hand. */
class TraceTest {
  private static final double EXACT = 1e-12;
  private final Trace trace = Trace.begin(Leak.onKnot());

  private static double chance(Trace trace, String cause) {
    return ranked(trace, cause).chance();
  }

  private static RankedCause ranked(Trace trace, String cause) {
    return trace.ranking().stream()
        .filter(ranked -> ranked.cause().id().equals(cause))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void beginsWithThePriors() {
    assertThat(trace.ranking())
        .extracting(ranked -> ranked.cause().id())
        .containsExactly("bowsprit-seal", "stem-fitting", "tank", "condensation", "something-else");
    assertThat(chance(trace, "bowsprit-seal")).isCloseTo(12 / 18.6, within(EXACT));
    assertThat(trace.trail()).isEmpty();
    assertThat(trace.explain()).isEmpty();
    assertThat(trace.contradiction()).isEmpty();
    assertThat(trace.settled()).isFalse();
  }

  @Test
  void followsBayesRule() {
    Trace salt = trace.answer("taste", "salt");
    double all = 12 * 0.8 + 3 * 0.8 + 1 * 0.1 + 2 * 0.1 + 0.6 * 0.5;
    assertThat(chance(salt, "bowsprit-seal")).isCloseTo(12 * 0.8 / all, within(EXACT));
    assertThat(chance(salt, "something-else")).isCloseTo(0.6 * 0.5 / all, within(EXACT));
    assertThat(ranked(salt, "tank").before()).isCloseTo(2 / 18.6, within(EXACT));
    assertThat(ranked(salt, "tank").chance()).isCloseTo(2 * 0.1 / all, within(EXACT));
    assertThat(ranked(salt, "tank").word()).isEqualTo("as good as ruled out");
  }

  @Test
  void changesAnAnswerWhereItStands() {
    Trace changed =
        trace.answer("taste", "salt").answer("seal-look", "whole").answer("taste", "fresh");
    assertThat(changed.answers())
        .containsExactly(Map.entry("taste", "fresh"), Map.entry("seal-look", "whole"));
    assertThat(changed.trail()).hasSize(2);
    Trace asIfFirst = trace.answer("taste", "fresh").answer("seal-look", "whole");
    assertThat(chance(changed, "tank")).isEqualTo(chance(asIfFirst, "tank"));
    assertThat(ranked(changed, "tank").before())
        .as("without the answer that was changed last")
        .isEqualTo(chance(trace.answer("seal-look", "whole"), "tank"));
  }

  @Test
  void takesBackAnyAnswer() {
    Trace both = trace.answer("taste", "salt").answer("seal-look", "split");
    assertThat(both.takeBack("seal-look")).isEqualTo(trace.answer("taste", "salt"));
    assertThat(both.takeBack("seal-look").ranking())
        .isEqualTo(trace.answer("taste", "salt").ranking());
    assertThat(both.takeBack("taste")).isEqualTo(trace.answer("seal-look", "split"));
    assertThat(both.takeBack("taste").takeBack("seal-look")).isEqualTo(trace);
    assertThat(trace.takeBack("taste")).isEqualTo(trace);
  }

  @Test
  void doesNotAskAgainWhatCouldNotBeTold() {
    String first = trace.next().id();
    Trace untold = trace.cantTell(first);
    assertThat(untold.ranking())
        .extracting(RankedCause::chance)
        .isEqualTo(trace.ranking().stream().map(RankedCause::chance).toList());
    assertThat(untold.alternatives())
        .extracting(alternative -> alternative.step().id())
        .doesNotContain(first);
    assertThat(untold.answers()).isEmpty();
    assertThat(untold.trail().get(0).answer()).isEqualTo("can't tell");
  }

  @Test
  void takesAnAnswerAfterAllForWhatCouldNotBeTold() {
    assertThat(trace.cantTell("taste").answer("taste", "salt").ranking())
        .isEqualTo(trace.answer("taste", "salt").ranking());
  }

  @Test
  void lowersACauseByWhatItsMendUsuallyCures() {
    Trace tried = trace.mendTried("stem-fitting");
    double second = 0.2 * 3 * 0.9;
    double all = 18.6 - 3 * 0.9 + second;
    assertThat(chance(tried, "stem-fitting")).isCloseTo(3 * 0.1 / all, within(EXACT));
    assertThat(chance(tried, "tank")).isCloseTo(2 * (1 + second / 15.6) / all, within(EXACT));
    assertThat(tried.trail().get(0).step()).isEqualTo(new MendFailed("stem-fitting"));
    assertThat(tried.takeBackMend("stem-fitting")).isEqualTo(trace);
    assertThat(tried.mendTried("stem-fitting")).isEqualTo(tried);
  }

  @Test
  void doesNotProposeAMendAgain() {
    Trace sure = trace.answer("taste", "salt").answer("seal-look", "split").answer("hose", "dry");
    assertThat(sure.next()).isInstanceOf(DoMend.class);
    assertThat(sure.next().id()).isEqualTo("replace-seal");
    assertThat(sure.mendTried("bowsprit-seal").alternatives())
        .extracting(alternative -> alternative.step().id())
        .doesNotContain("replace-seal");
  }

  @Test
  void proposesAMendOnceACauseIsSettled() {
    Trace sure = trace.answer("taste", "salt").answer("seal-look", "split");
    assertThat(sure.settled()).isTrue();
    assertThat(sure.done()).isTrue();
    assertThat(sure.next().kind()).isEqualTo("mend");
    assertThat(sure.next().minutes()).isEqualTo(60);
    assertThat(sure.next().why())
        .isEqualTo(
            "“The bowsprit seal no longer wipes the tube” is almost certain (96 %), mending it"
                + " takes 1 h, and no check that is left would save more time than it"
                + " takes.");
  }

  @Test
  void neverProposesTheYardsWorkAsTheOwners() {
    Trace tank =
        trace.answer("taste", "fresh").answer("seal-look", "whole").answer("tank-level", "loses");
    assertThat(tank.ranking().get(0).cause().id()).isEqualTo("tank");
    assertThat(tank.next()).isInstanceOf(CallYard.class);
    assertThat(tank.next().minutes()).isBetween(200.0, 250.0).isEqualTo(tank.expectedMinutes());
    assertThat(tank.next().why()).contains("“Mend the water tank”, is work for the yard");
    assertThat(tank.done()).isTrue();
    assertThat(tank.alternatives())
        .extracting(alternative -> alternative.step().id())
        .doesNotContain("mend-tank");
  }

  @Test
  void asksForTheCheapCheckThatPartsTheLikeliestCauses() {
    NextStep next = trace.next();
    assertThat(next).isInstanceOf(DoCheck.class);
    assertThat(next.id()).isEqualTo("seal-look");
    assertThat(next.text()).isEqualTo("Is the seal split?");
    assertThat(next.why())
        .isEqualTo(
            "3 min, and it tells “The bowsprit seal no longer wipes the tube” from the"
                + " others.");
    assertThat(trace.done()).isFalse();
  }

  @Test
  void paysForAccessOnce() {
    Trace hosed = trace.answer("hose", "drips-from-bolt");
    NextStep mend =
        hosed.alternatives().stream()
            .map(Alternative::step)
            .filter(step -> step.id().equals("rebed-stem-fitting"))
            .findFirst()
            .orElseThrow();
    assertThat(mend.minutes()).isEqualTo(90);
    assertThat(mend.toOpen()).isEmpty();
    NextStep before =
        trace.alternatives().stream()
            .map(Alternative::step)
            .filter(step -> step.id().equals("hose"))
            .findFirst()
            .orElseThrow();
    assertThat(before.minutes()).isEqualTo(15 + 20);
    assertThat(before.toOpen())
        .extracting(access -> access.id())
        .containsExactly("headlining-down");
    assertThat(before.why())
        .startsWith("35 min with what has to be opened first (Headlining taken down), and");
  }

  @Test
  void saysWhatAnAnswerChanged() {
    assertThat(trace.answer("taste", "fresh").explain())
        .contains(
            "“fresh” makes “The water tank leaks” three times as likely (11 % to 30 %) and “The"
                + " bowsprit seal no longer wipes the tube” less likely (65 % to 40 %).");
    assertThat(trace.cantTell("taste").explain())
        .contains("It changes no chance; the check is not asked again.");
    assertThat(trace.mendTried("bowsprit-seal").explain().orElseThrow())
        .startsWith("That “Replace the bowsprit seal” did not cure it makes ")
        .contains("“The bowsprit seal no longer wipes the tube” very unlikely (65 % to 9 %)");
  }

  @Test
  void keepsATrailInWords() {
    Trace done =
        trace.answer("hose", "drips-from-bolt").cantTell("taste").mendTried("stem-fitting");
    List<TrailEntry> trail = done.trail();
    assertThat(trail)
        .extracting(TrailEntry::text)
        .containsExactly(
            "Does it drip when you hose the bow?",
            "Does the water taste of salt?",
            "Re-bed the stem fitting");
    assertThat(trail)
        .extracting(TrailEntry::answer)
        .containsExactly("drips from bolt", "can't tell", "did not cure it");
    assertThat(trail).extracting(TrailEntry::changed).doesNotContain("");
  }

  @Test
  void listsAlternativesWithTheirExpectedMinutesBestFirst() {
    assertThat(trace.alternatives()).isNotEmpty();
    assertThat(trace.alternatives().get(0).step()).isEqualTo(trace.next());
    assertThat(trace.alternatives().get(0).expectedMinutes()).isEqualTo(trace.expectedMinutes());
    assertThat(trace.alternatives()).extracting(Alternative::expectedMinutes).isSorted();
    assertThat(trace.alternatives())
        .extracting(alternative -> alternative.step().id())
        .contains("yard", "taste", "hose", "seal-look", "tank-level", "replace-seal");
  }

  @Test
  void refusesWhatIsNotOnThePage() {
    assertThatThrownBy(() -> trace.answer("smell", "salt"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("taste, hose, seal-look, tank-level");
    assertThatThrownBy(() -> trace.answer("taste", "sweet"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("salt, fresh");
    assertThatThrownBy(() -> trace.mendTried("something-else"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("has no mend");
  }

  @Test
  void followsAnotherPolicyIfGivenOne() {
    Policy yardAtOnce =
        (model, now) ->
            new Advice(
                List.of(new Advice.Option(Advice.Action.YARD, 0, 200, 200, Advice.Grounds.EFFORT)),
                0);
    assertThat(Trace.begin(Leak.onKnot(), yardAtOnce).next()).isInstanceOf(CallYard.class);
  }
}
