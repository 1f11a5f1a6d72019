package limberboard.trace.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import limberboard.ContentTest;
import limberboard.effort.FileOrder;
import limberboard.effort.Following;
import limberboard.effort.MendsOnly;
import limberboard.effort.Planner;
import limberboard.effort.Questionnaire;
import limberboard.effort.Questionnaire.Order;
import limberboard.trace.Articles;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of {@code docs/tracing.md} has all rows; these are the quick ones, and the largest. */
@ContentTest
class PolicyComparisonTest {
  private static final double ROUNDING = 1e-6;

  @ParameterizedTest
  @CsvSource({
    "battery-goes-flat, redshank",
    "centreboard-stuck, turnstone",
    "play-in-steering, dunlin",
    "toilet-smells, whimbrel",
    "oil-in-keel-compartment, redshank"
  })
  void oursIsTheCheapestAndCloseToTheBestThereIs(String symptom, String boat) throws IOException {
    PolicyComparison minutes = PolicyComparison.of(fault(symptom, boat), 3_000_000);
    assertThat(minutes.ours())
        .isLessThanOrEqualTo(minutes.oneStep() + ROUNDING)
        .isLessThanOrEqualTo(minutes.fileOrder() + ROUNDING)
        .isLessThanOrEqualTo(minutes.fileQuestions() + ROUNDING)
        .isLessThanOrEqualTo(minutes.mendsOnly() + ROUNDING)
        .isLessThanOrEqualTo(minutes.mostTelling() + ROUNDING);
    assertThat(minutes.aboveBest()).isBetween(0.0, 0.02);
    assertThat(minutes.atLeast()).isPositive();
    assertThat(minutes.saves(2 * minutes.ours())).isCloseTo(0.5, within(ROUNDING));
  }

  /** The largest symptom: too large to be closed in here, but cheaper than every simple rule. */
  @Test
  void oursIsCheaperThanTheRulesOnTheLargestSymptom() throws IOException {
    var model = fault("water-in-forward-cabin", "redshank").model();
    double ours = new Following(model, new Planner()).minutes();
    assertThat(ours)
        .isLessThan(new Following(model, new FileOrder()).minutes())
        .isLessThan(new Following(model, new MendsOnly()).minutes())
        .isLessThan(
            new Following(model, new Questionnaire(Order.OF_THE_FILE, Trace.SETTLED)).minutes())
        .isLessThan(
            new Following(model, new Questionnaire(Order.MOST_TELLING_FIRST, Trace.SETTLED))
                .minutes());
  }

  private static Fault fault(String symptom, String boat) throws IOException {
    return Articles.fitted(Articles.workspace()).stream()
        .filter(one -> one.symptom().id().equals(symptom) && one.boat().id().equals(boat))
        .findFirst()
        .orElseThrow()
        .fault();
  }
}
