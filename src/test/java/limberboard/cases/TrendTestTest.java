package limberboard.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The test for a trend in proportions, against published examples. */
class TrendTestTest {
  /**
   * A. Agresti, <i>Categorical Data Analysis</i>, alcohol and malformation of infants (data of
   * Graubard and Korn 1987), scores 0, 0.5, 1.5, 4, 7: the trend statistic is z² = 6.57. Numbers
   * from memory.
   */
  @Test
  void alcoholAndMalformation() {
    TrendTest trend =
        new TrendTest(
            new double[] {0, 0.5, 1.5, 4, 7},
            new int[] {48, 38, 5, 1, 1},
            new int[] {17114, 14502, 793, 127, 38});
    assertThat(trend.z() * trend.z()).isCloseTo(6.57, within(0.01));
    assertThat(trend.z()).isPositive();
  }

  /**
   * With two groups the exact form is Fisher's exact test. R. A. Fisher, <i>The Design of
   * Experiments</i>, 1935, the lady tasting tea: of eight cups four have milk first; with all four
   * named right the chance is 1 in 70, with three right or more 17 in 70. From memory.
   */
  @Test
  void ladyTastingTea() {
    double[] groups = {0, 1};
    int[] cups = {4, 4};
    assertThat(new TrendTest(groups, new int[] {0, 4}, cups).rising())
        .isCloseTo(1 / 70.0, within(1e-12));
    assertThat(new TrendTest(groups, new int[] {1, 3}, cups).rising())
        .isCloseTo(17 / 70.0, within(1e-12));
    assertThat(new TrendTest(groups, new int[] {4, 0}, cups).rising()).isEqualTo(1);
  }

  @Test
  void exactAndNormalGoTogetherWithManyCases() {
    TrendTest trend =
        new TrendTest(
            new double[] {0, 1, 2, 3}, new int[] {10, 12, 16, 19}, new int[] {40, 40, 40, 40});
    assertThat(trend.z()).isCloseTo(2.28, within(0.01));
    assertThat(trend.rising()).as("one side of the normal: 0.0113").isBetween(0.008, 0.018);
  }

  @Test
  void whatIsTheSameEverywhereDoesNotRise() {
    assertThat(new TrendTest(new double[] {0, 1}, new int[] {3, 3}, new int[] {3, 3}).z()).isZero();
    assertThat(new TrendTest(new double[] {0, 1}, new int[] {3, 3}, new int[] {3, 3}).rising())
        .isEqualTo(1);
  }
}
