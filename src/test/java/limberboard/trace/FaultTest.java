package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import limberboard.boat.RecordedCase;
import limberboard.effort.EffortModel;
import limberboard.library.Library;
import limberboard.library.page.Model.Access;
import limberboard.library.value.Seen;
import limberboard.library.value.Skill;
import org.junit.jupiter.api.Test;

/**
 * What a page becomes on a boat; the numbers are worked out by hand from the page in {@code leak}.
 */
class FaultTest {
  private static final double EXACT = 1e-12;

  @Test
  void isMadeFromAWorkspaceWithoutProblems() {
    assertThat(Leak.workspace().problems()).isEmpty();
    assertThat(Leak.workspace().cases()).hasSize(3);
  }

  @Test
  void keepsOnlyCausesAndChecksThatFitTheBoat() {
    assertThat(Leak.onKnot().causes())
        .extracting(FaultCause::id)
        .containsExactly("bowsprit-seal", "stem-fitting", "condensation", "tank", "something-else");
    Fault without = Leak.on("ruff", List.of());
    assertThat(without.causes())
        .extracting(FaultCause::id)
        .containsExactly("stem-fitting", "condensation", "tank", "something-else");
    assertThat(without.checks())
        .extracting(FaultCheck::id)
        .containsExactly("taste", "hose", "tank-level");
  }

  @Test
  void takesPriorsFromWeightsAndTheFactorsThatHold() {
    double somethingElse = (6 + 3 + 1 + 2) / 20.0;
    double all = 6 * 2 + 3 + 1 + 2 + somethingElse;
    assertPriors(Leak.onKnot(), 12 / all, 3 / all, 1 / all, 2 / all, somethingElse / all);
    assertPriors(Leak.on("ruff", List.of()), 3 / 6.3, 1 / 6.3, 2 / 6.3, 0.3 / 6.3);
  }

  @Test
  void blendsThePriorsWithRecordedCasesBeforeTheFactors() {
    Fault fault = Leak.on("knot", Leak.workspace().cases());
    double seal = 2 * (20 * 6 / 12.6 + 2);
    double stem = 20 * 3 / 12.6;
    double condensation = 20 * 1 / 12.6;
    double tank = 20 * 2 / 12.6;
    double somethingElse = 20 * 0.6 / 12.6 + 1;
    double all = seal + stem + condensation + tank + somethingElse;
    assertPriors(
        fault, seal / all, stem / all, condensation / all, tank / all, somethingElse / all);
  }

  @Test
  void leavesOutCasesWhoseCauseTheBoatCannotHave() {
    Fault fault = Leak.on("ruff", Leak.workspace().cases());
    double listed = 20 * 6 / 6.3;
    double somethingElse = 20 * 0.3 / 6.3 + 1;
    assertThat(Leak.cause(fault, "something-else").prior())
        .isCloseTo(somethingElse / (listed + somethingElse), within(EXACT));
    assertThat(Leak.cause(fault, "tank").from())
        .isEqualTo("workshop's estimate and 1 recorded case (none with this cause)");
    assertThat(fault.chancesFrom()).isEqualTo("the workshop's estimate and 1 recorded case");
    assertThat(Leak.onKnot().chancesFrom()).isEqualTo("the workshop's estimate");
  }

  @Test
  void leavesOutCasesOfOtherSymptoms() {
    RecordedCase other =
        new RecordedCase(
            "x",
            "another-symptom",
            "tank",
            LocalDate.of(2025, 1, 1),
            "sample-24",
            OptionalInt.empty(),
            Map.of(),
            "");
    assertThat(Leak.cause(Leak.on("knot", List.of(other)), "tank").prior())
        .isEqualTo(Leak.cause(Leak.onKnot(), "tank").prior());
  }

  /** The mean of a Dirichlet distribution goes to the observed shares as observations grow. */
  @Test
  void comesToTheRecordedSharesWhenThereAreMany() {
    RecordedCase tank = Leak.workspace().cases().get(0);
    List<RecordedCase> many =
        IntStream.range(0, 100_000)
            .mapToObj(
                i ->
                    new RecordedCase(
                        "case-" + i,
                        tank.symptom(),
                        i % 4 == 0 ? "tank" : "condensation",
                        tank.date(),
                        tank.boat().model(),
                        tank.boat().built(),
                        Map.of(),
                        ""))
            .toList();
    Fault fault = Leak.on("ruff", many);
    assertThat(Leak.cause(fault, "tank").prior()).isCloseTo(0.25, within(1e-3));
    assertThat(Leak.cause(fault, "condensation").prior()).isCloseTo(0.75, within(1e-3));
    assertThat(Leak.cause(fault, "tank").from())
        .isEqualTo(
            "100000 recorded cases (25000 with this cause; counted as 49000.0, for other boats"
                + " count less) and workshop's estimate");
  }

  @Test
  void saysWhereFiguresComeFrom() {
    Fault estimated = Leak.onKnot();
    assertThat(Leak.cause(estimated, "tank").from()).isEqualTo("workshop's estimate");
    assertThat(Leak.cause(estimated, "something-else").from())
        .isEqualTo("one twentieth of the workshop's estimates");
    Fault recorded = Leak.on("knot", Leak.workspace().cases());
    assertThat(Leak.cause(recorded, "bowsprit-seal").from())
        .isEqualTo("workshop's estimate and 3 recorded cases (2 with this cause)");
  }

  @Test
  void takesTheMendFromItsProcedure() {
    FaultCause stem = Leak.cause(Leak.onKnot(), "stem-fitting");
    assertThat(stem.mendTitle()).isEqualTo("Re-bed the stem fitting");
    assertThat(stem.mendMinutes()).isEqualTo(90);
    assertThat(stem.mendAccess()).extracting(Access::id).containsExactly("headlining-down");
    assertThat(stem.mendSkill()).isEqualTo(Skill.HANDY);
    assertThat(stem.mendedByOwner()).isTrue();
    assertThat(stem.cures()).isEqualTo(0.9);
    assertThat(Leak.cause(Leak.onKnot(), "condensation").seen()).isEqualTo(Seen.LATER);
  }

  @Test
  void chargesTheYardsMinutesForTheYardsWork() {
    FaultCause tank = Leak.cause(Leak.onKnot(), "tank");
    assertThat(tank.mendMinutes()).isEqualTo(200);
    assertThat(tank.mendAccess()).isEmpty();
    assertThat(tank.mendedByOwner()).isFalse();
    FaultCause somethingElse = Leak.cause(Leak.onKnot(), "something-else");
    assertThat(somethingElse.mendMinutes()).isEqualTo(200);
    assertThat(somethingElse.mend()).isEmpty();
    assertThat(somethingElse.isSomethingElse()).isTrue();
  }

  @Test
  void leavesAMendWithoutProcedureToTheYard() {
    FaultCause seal = Leak.cause(Leak.of("knot", Library.empty(), List.of()), "bowsprit-seal");
    assertThat(seal.mendTitle()).isEqualTo("replace seal");
    assertThat(seal.mendSkill()).isEqualTo(Skill.YARD);
    assertThat(seal.mendMinutes()).isEqualTo(200);
  }

  @Test
  void listsWhatMustBeOpenedWithWhatThatNeedsFirst() {
    assertThat(Leak.check(Leak.onKnot(), "tank-level").access())
        .extracting(Access::id)
        .containsExactly("berth-lifted", "tank-out");
    EffortModel model = Leak.onKnot().model();
    int level = Leak.onKnot().checkNumber("tank-level");
    assertThat(model.accessMinutes(model.checks().get(level).access(), model.beginning().open()))
        .isEqualTo(35);
  }

  @Test
  void readsLikelihoodsByTheFileFormatsRule() {
    Fault fault = Leak.onKnot();
    assertLikelihoods(fault, "taste", "bowsprit-seal", 0.8, 0.2);
    assertLikelihoods(fault, "taste", "something-else", 0.5, 0.5);
    assertLikelihoods(fault, "hose", "stem-fitting", 0.95, 0.05);
    assertLikelihoods(fault, "hose", "tank", 0.05, 0.95);
    assertLikelihoods(fault, "hose", "something-else", 0.5, 0.5);
    assertLikelihoods(fault, "seal-look", "bowsprit-seal", 0.5, 0.1, 0.4);
    assertLikelihoods(fault, "seal-look", "tank", 0.04, 0.9, 0.06);
    assertLikelihoods(fault, "seal-look", "something-else", 1 / 3.0, 1 / 3.0, 1 / 3.0);
  }

  private static void assertLikelihoods(
      Fault fault, String check, String cause, double... expected) {
    int number = fault.checkNumber(check);
    double[] actual =
        IntStream.range(0, expected.length)
            .mapToDouble(
                answer ->
                    fault.model().answers().likelihood(number, answer, fault.causeNumber(cause)))
            .toArray();
    assertThat(actual).as(check + " for " + cause).containsExactly(expected, within(EXACT));
  }

  private static void assertPriors(Fault fault, double... expected) {
    assertThat(fault.causes().stream().mapToDouble(FaultCause::prior).toArray())
        .containsExactly(expected, within(EXACT));
  }

  @Test
  void saysWhatThereIsWhenAskedForWhatThereIsNot() {
    assertThatThrownBy(() -> Leak.on("ruff", List.of()).checkNumber("seal-look"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "\"seal-look\" is no check of \"Water in the forward cabin\" on this boat;"
                + " there are: taste, hose, tank-level");
  }

  @Test
  void isEqualWhenItSaysTheSameOfTheSameBoat() {
    assertThat(Leak.onKnot()).isEqualTo(Leak.onKnot()).hasSameHashCodeAs(Leak.onKnot());
    assertThat(Leak.onKnot()).isNotEqualTo(Leak.on("ruff", List.of()));
    assertThat(Leak.onKnot())
        .as("recorded cases change what is likely")
        .isNotEqualTo(Leak.on("knot", Leak.workspace().cases()));
  }

  @Test
  void aTraceReadAgainKeepsItsPlanOnlyWhileTheNumbersAreTheSame() {
    Trace trace = Trace.begin(Leak.onKnot()).answer("taste", "salt");
    Fault again = Leak.onKnot();
    Trace carried = trace.readAgain(again).orElseThrow();
    assertThat(carried.fault()).isSameAs(again);
    assertThat(carried.advice()).isSameAs(trace.advice());
    assertThat(carried).isEqualTo(trace);
    assertThat(trace.readAgain(Leak.on("knot", Leak.workspace().cases()))).isEmpty();
    assertThat(trace.readAgain(Leak.on("ruff", List.of()))).isEmpty();
  }
}
