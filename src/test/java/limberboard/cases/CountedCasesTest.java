package limberboard.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Check;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.Test;

/** Which cases count for a boat, and how much. */
class CountedCasesTest {
  private static final double EXACT = 1e-12;
  private static final Set<String> CAUSES = Set.of("stem-fitting", "condensation", "tank");

  private static double weight(CaseBoat boat) {
    return CaseWeights.of(SampleCases.of("x", "tank", boat, Map.of()), SampleCases.on("ruff"));
  }

  @Test
  void aCaseOfAnotherBoatCountsLess() {
    assertThat(weight(SampleCases.facts("sample-24", 2015, Water.SALT, Use.PRIVATE))).isEqualTo(1);
    assertThat(weight(SampleCases.facts("other", 2015, Water.SALT, Use.PRIVATE))).isEqualTo(0.5);
    assertThat(weight(SampleCases.facts("sample-24", 2015, Water.FRESH, Use.PRIVATE)))
        .isEqualTo(0.7);
    assertThat(weight(SampleCases.facts("sample-24", 2015, Water.SALT, Use.CHARTER)))
        .isEqualTo(0.7);
    assertThat(weight(SampleCases.facts("sample-24", 2025, Water.SALT, Use.PRIVATE)))
        .as("one year old at the time, Ruff is eleven")
        .isEqualTo(0.7);
    assertThat(weight(SampleCases.facts("sample-24", 2022, Water.SALT, Use.PRIVATE)))
        .as("four years old at the time")
        .isEqualTo(1);
    assertThat(weight(CaseBoat.of("other", OptionalInt.empty())))
        .as("what is not known counts as another")
        .isCloseTo(0.5 * 0.7 * 0.7 * 0.7, within(EXACT));
  }

  private static CountedCases counted(List<RecordedCase> cases) {
    return CountedCases.of("water-forward", CAUSES, SampleCases.on("ruff"), cases);
  }

  @Test
  void onlyProvenCausesThatTheBoatCanHaveCount() {
    RecordedCase tank = SampleCases.mended("a", "tank", Map.of());
    List<RecordedCase> cases =
        List.of(
            tank,
            SampleCases.mended("b", "bowsprit-seal", Map.of()),
            tank.ended(tank.cause(), CaseEnd.UNKNOWN.with(CaseOutcome.NOT_MENDED)),
            tank.ended(tank.cause(), CaseEnd.OPEN),
            tank.ended(tank.cause(), CaseEnd.UNKNOWN.with(CaseOutcome.HANDED_OVER)),
            SampleCases.mended("c", "something-else", Map.of()));
    assertThat(counted(cases).number()).isEqualTo(3);
    assertThat(counted(cases).number("tank")).isEqualTo(2);
    assertThat(counted(cases).worth()).isEqualTo(3);
  }

  @Test
  void countsMoveTheEstimates() {
    Check taste =
        SampleCases.workspace()
            .library()
            .symptom("water-forward")
            .flatMap(page -> page.details().check("taste"))
            .orElseThrow();
    CountedCases cases =
        counted(
            List.of(
                SampleCases.mended("a", "tank", Map.of("taste", "salt")),
                SampleCases.mended("b", "tank", Map.of("taste", "salt")),
                SampleCases.mended("c", "tank", Map.of("taste", "fresh")),
                SampleCases.mended("d", "tank", Map.of()),
                SampleCases.mended("e", "condensation", Map.of("taste", "fresh")),
                SampleCases.mended("f", "something-else", Map.of("taste", "fresh"))));
    assertThat(cases.answers(taste, "tank", new double[] {0.1, 0.9}))
        .containsExactly(new double[] {(10 * 0.1 + 2) / 13, (10 * 0.9 + 1) / 13}, within(EXACT));
    assertThat(cases.answers(taste, "stem-fitting", new double[] {0.8, 0.2}))
        .containsExactly(new double[] {0.8, 0.2}, within(EXACT));
    assertThat(cases.answers(taste, "something-else", new double[] {0.5, 0.5}))
        .as("the next something else is another thing")
        .containsExactly(new double[] {0.5, 0.5}, within(EXACT));
    assertThat(cases.answered(taste)).isEqualTo(4);
    assertThat(
            cases.causes(
                List.of("stem-fitting", "condensation", "tank", "something-else"),
                new double[] {0.4, 0.3, 0.2, 0.1}))
        .containsExactly(new double[] {8 / 26.0, 7 / 26.0, 8 / 26.0, 3 / 26.0}, within(EXACT));
  }

  @Test
  void earlierCasesAreFoundTheLikestFirstWithTheReason() {
    RecordedCase same = SampleCases.mended("same", "tank", Map.of("taste", "fresh"));
    RecordedCase otherAnswer = SampleCases.mended("answer", "tank", Map.of("taste", "salt"));
    RecordedCase otherBoat =
        SampleCases.of(
            "boat",
            "tank",
            SampleCases.facts("other", 2015, Water.FRESH, Use.PRIVATE),
            Map.of("taste", "fresh"));
    RecordedCase open = same.named("open").ended(same.cause(), CaseEnd.OPEN);
    List<SimilarCases.Similar> found =
        SimilarCases.of(
            "water-forward",
            SampleCases.workspace().library().symptom("water-forward").orElseThrow().details(),
            SampleCases.on("ruff"),
            Map.of("taste", "fresh"),
            List.of(otherAnswer, open, otherBoat, same));
    assertThat(found)
        .extracting(each -> each.recorded().id())
        .containsExactly("same", "boat", "answer");
    assertThat(found)
        .extracting(SimilarCases.Similar::likeness)
        .containsExactly(2.0, 2 * 0.5 * 0.7, 0.5);
    assertThat(found.get(0).reason())
        .isEqualTo(
            "the same model, about the same age, the same water, the same use, 1 same answer"
                + " (taste: fresh)");
    assertThat(found.get(1).reason())
        .isEqualTo("about the same age, the same use, 1 same answer (taste: fresh)");
    assertThat(found.get(2).reason()).endsWith("1 other answer (taste)");
  }
}
