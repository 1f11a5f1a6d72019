package limberboard.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Learning shares from counts, against textbook examples. */
class DirichletTest {
  private static final double EXACT = 1e-12;

  /**
   * A. Gelman, J. Carlin, H. Stern, D. Rubin, <i>Bayesian Data Analysis</i>, section on
   * multiparameter models, example "pre-election polling": of 1,447 people asked in October 1988,
   * 727 were for one candidate, 583 for the other and 137 for others or none. With the uniform
   * prior, which is a Dirichlet distribution with all parameters 1, the posterior is a Dirichlet
   * distribution with the parameters 728, 584 and 138. Numbers from memory.
   */
  @Test
  void pollBeforeAnElection() {
    double[] uniform = {1.0 / 3, 1.0 / 3, 1.0 / 3};
    double[] mean = Dirichlet.mean(uniform, 3, new double[] {727, 583, 137});
    assertThat(mean)
        .containsExactly(new double[] {728 / 1450.0, 584 / 1450.0, 138 / 1450.0}, within(EXACT));
    assertThat(mean[0] - mean[1]).as("printed there as 0.10").isCloseTo(0.10, within(0.005));
  }

  /**
   * Laplace's rule of succession, 1774: after n successes in N trials and nothing known before, the
   * next succeeds with the chance (n + 1) ÷ (N + 2). From memory.
   */
  @Test
  void ruleOfSuccession() {
    for (int n = 0; n <= 10; n++) {
      double[] mean = Dirichlet.mean(new double[] {0.5, 0.5}, 2, new double[] {n, 10 - n});
      assertThat(mean[0]).isCloseTo((n + 1) / 12.0, within(EXACT));
    }
  }

  @Test
  void withoutCountsItIsTheEstimateAndWithManyTheFrequency() {
    double[] estimate = {0.7, 0.2, 0.1};
    assertThat(Dirichlet.mean(estimate, 20, new double[3]))
        .containsExactly(estimate, within(EXACT));
    double[] much = Dirichlet.mean(estimate, 20, new double[] {1e6, 3e6, 0});
    assertThat(much).containsExactly(new double[] {0.25, 0.75, 0}, within(1e-5));
    double[] half = Dirichlet.mean(estimate, 20, new double[] {0, 0, 20});
    assertThat(half).containsExactly(new double[] {0.35, 0.1, 0.55}, within(EXACT));
  }

  @Test
  void oneAfterTheOtherIsTheSameAsAllAtOnce() {
    double[] first = Dirichlet.mean(new double[] {0.6, 0.4}, 10, new double[] {3, 1});
    double[] then = Dirichlet.mean(first, 14, new double[] {0, 5});
    assertThat(then)
        .containsExactly(
            Dirichlet.mean(new double[] {0.6, 0.4}, 10, new double[] {3, 6}), within(EXACT));
  }

  @Test
  void distributionsAreApartByHalfTheSumOfDifferences() {
    assertThat(Dirichlet.apart(new double[] {1, 0}, new double[] {0, 1})).isEqualTo(1);
    assertThat(Dirichlet.apart(new double[] {0.5, 0.3, 0.2}, new double[] {0.2, 0.3, 0.5}))
        .isCloseTo(0.3, within(EXACT));
    assertThatThrownBy(() -> Dirichlet.apart(new double[1], new double[2]))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Dirichlet.mean(new double[1], 1, new double[2]))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
