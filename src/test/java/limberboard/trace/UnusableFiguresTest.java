package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Head;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.value.Condition;
import limberboard.library.value.Interval;
import limberboard.trace.review.PageReview;
import limberboard.trace.review.Remark;
import limberboard.trace.review.Sensitivity;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures that cannot be right have been reported; a trace goes on without them. */
class UnusableFiguresTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {0, -3, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300})
  void standsWeightsFactorsAndMinutesThatCannotBe(double figure) {
    Trace trace = Trace.begin(fault(figure));
    assertThat(trace.ranking()).hasSize(4);
    assertThat(trace.ranking().stream().mapToDouble(RankedCause::chance).sum())
        .isCloseTo(1, within(1e-12));
    assertThat(trace.ranking()).allMatch(ranked -> Double.isFinite(ranked.chance()));
    assertThat(trace.expectedMinutes()).isFinite().isPositive();
    assertThat(trace.answer("smell", "bad").expectedMinutes()).isFinite().isPositive();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, Double.NaN, Double.POSITIVE_INFINITY, 1e300})
  void standsBeingReviewed(double figure) {
    Fault fault = fault(figure);
    PageReview review = new PageReview(fault.page(), List.of(fault));
    assertThat(review.warnings()).isEmpty();
    assertThat(review.advice()).extracting(Remark::pointer).contains("/checks/0");
    assertThat(Sensitivity.of(fault).estimates())
        .allMatch(estimate -> Double.isFinite(estimate.minutesLost()));
  }

  /** One cause twice, one with the figure, a check with the figure and a check without answers. */
  private static Fault fault(double figure) {
    Fault knot = Leak.onKnot();
    List<Interval.Factor> factors = List.of(new Interval.Factor(Condition.ALWAYS, figure));
    Page<Symptom> page =
        new Page<>(
            "odd",
            "articles/symptoms/odd.md",
            new Head("Odd", null, null, null, null, null, null, null),
            new Symptom(
                null,
                List.of(
                    cause("good", 3, List.of()),
                    cause("good", 3, List.of()),
                    cause("bad", figure, factors)),
                List.of(
                    check("smell", figure, List.of("good", "bad")), check("none", 1, List.of())),
                OptionalDouble.of(figure)),
            "",
            1);
    return Fault.of(page, knot.fitting(), Leak.workspace().library(), List.of());
  }

  private static Cause cause(String id, double weight, List<Interval.Factor> factors) {
    return new Cause(id, id, null, null, weight, factors, "replace-seal", null, null);
  }

  private static Check check(String id, double minutes, List<String> answers) {
    return new Check(
        id,
        "Ask?",
        "How.",
        Optional.empty(),
        minutes,
        null,
        null,
        null,
        null,
        null,
        answers,
        Map.of(),
        null,
        null,
        false,
        null,
        null);
  }
}
