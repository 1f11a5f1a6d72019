package limberboard.library.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The words against what is published of them. The abstracts of the two studies were read; the
 * single figures of the scale are from memory of the first one's table, so they are held to what
 * the abstracts say and to their order, not to the table.
 *
 * <ul>
 *   <li>F. Mosteller and C. Youtz, <i>Quantifying Probabilistic Expressions</i>, Statistical
 *       Science 5(1), 1990: a modified expression means half as far from the nearer end, 0 or 100,
 *       as the unmodified one;
 *   <li>B. Reagan, F. Mosteller and C. Youtz, <i>Quantitative meanings of verbal probability
 *       expressions</i>, Journal of Applied Psychology 74(3), 1989: positive expressions lie closer
 *       to 50 than their negative counterparts.
 * </ul>
 */
class LikelihoodScaleTest {
  private static double value(String word) {
    return Likelihood.parse(word).value();
  }

  @Test
  void veryHalvesTheDistanceToTheNearerEnd() {
    assertThat(value("very-often")).isCloseTo(1 - (1 - value("often")) / 2, within(0.015));
  }

  @ParameterizedTest
  @CsvSource({"always, never", "almost-always, almost-never", "often, seldom"})
  void positiveWordsLieNoFartherFromTheMiddleThanNegativeOnes(String positive, String negative) {
    assertThat(value(positive)).isGreaterThan(0.5);
    assertThat(value(negative)).isLessThan(0.5);
    assertThat(value(positive) - 0.5).isLessThanOrEqualTo(0.5 - value(negative) + 1e-12);
  }

  @Test
  void wordsFallFromAlwaysToNever() {
    assertThat(List.copyOf(Likelihood.scale().values()))
        .isSortedAccordingTo(Comparator.reverseOrder())
        .doesNotHaveDuplicates();
    assertThat(Likelihood.scale().keySet()).startsWith("always").endsWith("never");
  }

  /** Nothing a person can say of a fault is beyond doubt: no word rules an answer out. */
  @Test
  void noWordIsCertainAndTheEndsMirrorEachOther() {
    assertThat(Likelihood.scale().values()).allMatch(value -> value > 0 && value < 1);
    assertThat(value("always")).isCloseTo(1 - value("never"), within(1e-12));
    assertThat(value("even")).isEqualTo(0.5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "1", "0.25"})
  void numbersStandForThemselves(String number) {
    assertThat(value(number)).isEqualTo(Double.parseDouble(number));
  }

  @ParameterizedTest
  @ValueSource(strings = {"mostly", "1.5", "-0.1", "NaN", ""})
  void refusesWhatIsNeitherAWordNorANumberFromNoughtToOne(String text) {
    assertThatThrownBy(() -> Likelihood.parse(text)).isInstanceOf(IllegalArgumentException.class);
  }
}
