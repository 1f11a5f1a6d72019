package limberboard.drill.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScoresTest {
  private static final double EXACT = 1e-12;

  private static List<Certainty> said(double[] said, int[] happened) {
    List<Certainty> all = new ArrayList<>();
    for (int i = 0; i < said.length; i++) {
      all.add(new Certainty(said[i], happened[i] == 1, 0.5));
    }
    return all;
  }

  /**
   * Table 1 of Brier (1950): ten forecasts of rain or no rain, whose score P is 0.19. The figures
   * are from memory; that they come to the paper's 0.19 is a check of both.
   */
  @Test
  void brierOnTheExampleOfHisPaper() {
    double[] rain = {0.7, 0.9, 0.8, 0.4, 0.2, 0, 0, 0, 0, 0.1};
    int[] rained = {0, 1, 1, 1, 0, 0, 0, 0, 0, 0};
    List<double[]> forecasts = new ArrayList<>();
    List<Integer> happened = new ArrayList<>();
    for (int i = 0; i < rain.length; i++) {
      forecasts.add(new double[] {rain[i], 1 - rain[i]});
      happened.add(rained[i] == 1 ? 0 : 1);
    }
    assertThat(BrierScore.of(forecasts, happened)).isCloseTo(0.19, within(EXACT));
    assertThat(Certainty.brier(said(rain, rained)).getAsDouble())
        .as("half of it for two classes")
        .isCloseTo(0.095, within(EXACT));
  }

  /** As the paper says: perfect forecasts have 0, the worst 2. */
  @Test
  void brierIsFromNothingToTwo() {
    List<double[]> sure = List.of(new double[] {1, 0, 0});
    assertThat(BrierScore.of(sure, List.of(0))).isZero();
    assertThat(BrierScore.of(sure, List.of(2))).isEqualTo(2);
    assertThatThrownBy(() -> BrierScore.of(sure, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * The worked example of scikit-learn's {@code log_loss}, read in its documentation: 0.21616. And
   * of its {@code brier_score_loss}, from memory: 0.0375.
   */
  @Test
  void scoresAgreeWithAReferenceLibrary() {
    double[] spam = {0.9, 0.1, 0.2, 0.65};
    assertThat(Certainty.logarithmic(said(spam, new int[] {1, 0, 0, 1})).getAsDouble())
        .isCloseTo(0.21616, within(5e-6));
    double[] class1 = {0.1, 0.9, 0.8, 0.3};
    assertThat(Certainty.brier(said(class1, new int[] {0, 1, 1, 0})).getAsDouble())
        .isCloseTo(0.0375, within(EXACT));
  }

  /** The worked table of scikit-learn's {@code calibration_curve}, from memory. */
  @Test
  void calibrationAgreesWithAPublishedTable() {
    double[] said = {0.1, 0.2, 0.3, 0.4, 0.65, 0.7, 0.8, 0.9, 1};
    int[] right = {0, 0, 0, 0, 1, 1, 1, 1, 1};
    Calibration three = Calibration.of(said(said, right), 3);
    assertThat(three.classes()).extracting(Calibration.Said::count).containsExactly(3, 2, 4);
    double[] averages = three.classes().stream().mapToDouble(Calibration.Said::said).toArray();
    double[] shares = three.classes().stream().mapToDouble(Calibration.Said::right).toArray();
    assertThat(averages).containsExactly(new double[] {0.2, 0.525, 0.85}, within(EXACT));
    assertThat(shares).containsExactly(new double[] {0, 0.5, 1}, within(EXACT));
    assertThat(three.off()).isCloseTo((3 * 0.2 + 2 * 0.025 + 4 * 0.15) / 9, within(EXACT));
  }

  /** Both scores are proper: nothing else said is expected to score better than what is so. */
  @Test
  void honestyPays() {
    for (int truth = 1; truth < 100; truth++) {
      double so = truth / 100.0;
      for (int lie = 1; lie < 100; lie++) {
        double other = lie / 100.0;
        assertThat(expectedBrier(so, so)).isLessThanOrEqualTo(expectedBrier(other, so) + EXACT);
        assertThat(expectedLog(so, so)).isLessThanOrEqualTo(expectedLog(other, so) + EXACT);
      }
    }
  }

  private static double expectedBrier(double said, double so) {
    return so * Certainty.brier(List.of(new Certainty(said, true, so))).getAsDouble()
        + (1 - so) * Certainty.brier(List.of(new Certainty(said, false, so))).getAsDouble();
  }

  private static double expectedLog(double said, double so) {
    return so * Certainty.logarithmic(List.of(new Certainty(said, true, so))).getAsDouble()
        + (1 - so) * Certainty.logarithmic(List.of(new Certainty(said, false, so))).getAsDouble();
  }

  @Test
  void whoSaysNothingHasNoScoreAndWhoIsSureAndWrongHasAFiniteOne() {
    assertThat(Certainty.brier(List.of())).isEmpty();
    assertThat(Certainty.logarithmic(List.of())).isEmpty();
    assertThat(Certainty.logarithmic(said(new double[] {1}, new int[] {0})).getAsDouble())
        .isCloseTo(-Math.log(0.005), within(EXACT));
    assertThat(Calibration.of(List.of(), 5).classes()).isEmpty();
    assertThatThrownBy(() -> new Certainty(1.01, true, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
