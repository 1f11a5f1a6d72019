package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import limberboard.letters.recognise.Coefficients.Row;
import org.junit.jupiter.api.Test;

/** The logistic regression. */
class CoefficientsTest {
  private static List<Row> rows(double figure, int so, int not) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < so + not; i++) {
      rows.add(new Row(new double[] {figure}, i < so));
    }
    return rows;
  }

  /**
   * With one figure that is 0 or 1 the likeliest coefficients have a closed form: the constant is
   * the log odds at 0, the value is the log of the odds ratio (A. Agresti, Categorical Data
   * Analysis, section on logistic regression with a binary predictor).
   */
  @Test
  void ofATwoByTwoTableTheyAreLogOddsAndLogOddsRatio() {
    List<Row> rows = new ArrayList<>(rows(0, 10, 30));
    rows.addAll(rows(1, 30, 10));
    Coefficients learnt = Coefficients.learnt(rows);
    assertThat(learnt.values().get(0)).isCloseTo(Math.log(10.0 / 30), within(0.05));
    assertThat(learnt.values().get(1)).isCloseTo(Math.log(9), within(0.1));
    assertThat(learnt.chance(new double[] {1})).isCloseTo(0.75, within(0.01));
    assertThat(learnt.chance(new double[] {0})).isCloseTo(0.25, within(0.01));
  }

  @Test
  void theListThatComesWithTheProgramIsRead() {
    assertThat(Coefficients.named("symptom").values()).hasSize(15);
    assertThat(Coefficients.named("fault").values()).hasSize(13);
    assertThat(Coefficients.named("covered").values()).hasSize(31);
    assertThat(Coefficients.named("answer").values()).hasSize(18);
    assertThat(Coefficients.named("urgent").values()).hasSize(9);
    assertThat(Coefficients.named("untaught answer").values()).hasSize(18);
    assertThat(new Coefficients(List.of(0.5, -1.0)).line("x")).isEqualTo("x: 0.5000 -1.0000");
  }
}
