package limberboard.trace.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.cases.SampleCases;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Check;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import org.junit.jupiter.api.Test;

/** Cases are invented the same for the same seed, and what they teach is measured on others. */
class LearningReviewTest {
  private static final LocalDate UNTIL = LocalDate.of(2026, 10, 31);

  private static List<RecordedCase> invented(Library library, long seed, int count) {
    return new CaseInventor(library, seed, UNTIL).cases(count);
  }

  private static Library demo() throws IOException {
    return new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read().library();
  }

  @Test
  void theSameSeedInventsTheSameCases() throws IOException {
    Library library = demo();
    List<RecordedCase> cases = invented(library, 7, 300);
    assertThat(cases).hasSize(300).isEqualTo(invented(library, 7, 300));
    assertThat(invented(library, 7, 100)).isEqualTo(cases.subList(0, 100));
    assertThat(invented(library, 8, 100)).isNotEqualTo(cases.subList(0, 100));
    assertThat(cases.get(0).id()).isEqualTo("invented-7-001");
    assertThat(cases)
        .allSatisfy(
            each -> {
              Symptom symptom = library.symptom(each.symptom()).orElseThrow().details();
              Fitting fitting = new Fitting(each.boat().boat(library).orElseThrow(), each.date());
              assertThat(each.date()).isBetween(LocalDate.of(2021, 1, 1), UNTIL);
              assertThat(each.boat().id()).isEmpty();
              each.provenCause()
                  .flatMap(symptom::cause)
                  .ifPresent(cause -> assertThat(fitting.fits(cause.fits())).isTrue());
              assertThat(each.cantTell()).noneMatch(each.answers()::containsKey);
              each.answers()
                  .forEach(
                      (check, answer) -> {
                        Check asked = symptom.check(check).orElseThrow();
                        assertThat(asked.answers()).contains(answer);
                        assertThat(fitting.fits(asked.fits())).isTrue();
                      });
            });
    assertThat(cases).filteredOn(RecordedCase::isOpen).isNotEmpty().hasSizeLessThan(30);
  }

  @Test
  void hiddenFactorsStayWithinTheirBounds() {
    HiddenTruth truth = new HiddenTruth(7);
    Symptom symptom =
        SampleCases.workspace().library().symptom("water-forward").orElseThrow().details();
    boolean differs = false;
    for (int i = 0; i < 200; i++) {
      assertThat(truth.symptom("symptom-" + i)).isBetween(1 / 8.0, 8.0);
      assertThat(truth.minutes("procedure-" + i)).isBetween(0.5, 2.0);
      double weight = truth.weight("symptom-" + i, symptom.causes().get(0));
      assertThat(weight).isBetween(6 / 5.0, 6 * 5.0);
      differs |= Math.abs(weight - 6) > 1;
    }
    assertThat(differs).isTrue();
    double[] answers = truth.answers("water-forward", symptom.checks().get(0), "tank");
    assertThat(answers[0] + answers[1]).isCloseTo(1, within(1e-12));
    assertThat(answers[0]).isNotCloseTo(0.1, within(1e-6));
  }

  @Test
  void aReplayedCaseCostsWhatItsStepsCost() {
    RecordedCase tank = SampleCases.mended("x", "tank", Map.of("taste", "fresh"));
    Fault fault =
        Fault.of(
            SampleCases.workspace().library().symptom("water-forward").orElseThrow(),
            SampleCases.on("ruff"),
            SampleCases.workspace().library(),
            List.of());
    double minutes = new CaseReplay(fault, tank, "tank").minutes();
    double more =
        new CaseReplay(fault, tank.answered(Map.of("taste", "salt"), List.of()), "tank").minutes();
    assertThat(minutes).isPositive();
    assertThat(more).as("a misleading answer costs more").isGreaterThan(minutes);
  }

  @Test
  void heldBackCasesCostLessWithWhatOthersTeachAndChancesMoveToTheFrequencies() {
    Workspace leak = SampleCases.workspace();
    List<RecordedCase> cases = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      String cause = i % 10 == 0 ? "tank" : "condensation";
      cases.add(SampleCases.mended("case-" + (100 + i), cause, Map.of("taste", "fresh")));
    }
    Workspace taught = new Workspace(leak.library(), leak.boats(), cases, List.of());
    LearningReview review = LearningReview.of(taught, 5, 1);
    assertThat(review.replayed()).isEqualTo(60);
    assertThat(review.minutesWith()).isLessThan(review.minutesWithout());
    assertThat(review.after()).isLessThan(review.before() / 2);
    assertThat(review).isEqualTo(LearningReview.of(taught, 5, 1));
    Workspace untaught = new Workspace(leak.library(), leak.boats(), List.of(), List.of());
    assertThat(LearningReview.of(untaught, 5, 1).replayed()).isZero();
  }
}
