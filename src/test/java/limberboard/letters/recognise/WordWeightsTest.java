package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Weights of words, worked by hand from the formula of Dirichlet smoothing, (count + μ p) / (length
 * + μ), in C. Zhai and J. Lafferty, A study of smoothing methods for language models, SIGIR 2001
 * (from memory), with μ = 4.
 */
class WordWeightsTest {
  private static final int CABIN = 0;
  private static final int ENGINE = 1;

  private final WordWeights weights =
      new WordWeights(
          List.of(Map.of("water", 3.0, "deck", 1.0), Map.of("water", 1.0, "motor", 3.0)), 4);

  /**
   * Of both topics 3/4 and 1/4 of the words are water, so half; (3 + 4 × 0.5) / (4 + 4) = 0.625.
   */
  @Test
  void aWordSpeaksForTheTopicThatHasItMoreOften() {
    assertThat(weights.of("water")).hasSize(1);
    assertThat(weights.of("water").get(0).topic()).isEqualTo(CABIN);
    assertThat(weights.of("water").get(0).weight())
        .isCloseTo(Math.log(0.625 / 0.5) * 3 / 4.5, within(1e-9));
  }

  /** 3/8 of the words of both are motor; (3 + 4 × 0.375) / 8 = 0.5625. */
  @Test
  void aWordThatOneTopicHasAloneSaysMore() {
    assertThat(weights.of("motor")).hasSize(1);
    assertThat(weights.of("motor").get(0).topic()).isEqualTo(ENGINE);
    assertThat(weights.of("motor").get(0).weight())
        .isCloseTo(Math.log(0.5625 / 0.375) * 3 / 4.5, within(1e-9));
  }

  @Test
  void aWordThatNoTopicHasSaysNothing() {
    assertThat(weights.of("keel")).isEmpty();
  }
}
