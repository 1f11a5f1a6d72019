package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import limberboard.library.value.Likelihood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceWordsTest {
  @ParameterizedTest
  @CsvSource({
    "1, as good as certain",
    "0.93, almost certain",
    "0.8, likely",
    "0.5, as likely as not",
    "0.3, less likely than not",
    "0.16, unlikely",
    "0.06, very unlikely",
    "0.03, most unlikely",
    "0, as good as ruled out"
  })
  void saysAChanceByTheNearestLikelihoodWord(double chance, String said) {
    assertThat(ChanceWords.of(chance)).isEqualTo(said);
  }

  /** In a list of the likeliest, not all can be unlikely: what leads says how often it is so. */
  @ParameterizedTest
  @CsvSource({
    "0.5, as likely as not",
    "0.39, as likely as not",
    "0.33, about one in three",
    "0.22, about one in five",
    "0.16, about one in six",
    "0.1, about one in ten",
    "0.083, about one in 12",
    "0.066, about one in 15",
    "0.03, about one in 30",
    "0.02, about one in 50",
    "0.01, as good as ruled out"
  })
  void saysAChanceOfAListAsOneInSoMany(double chance, String said) {
    assertThat(ChanceWords.listed(chance)).isEqualTo(said);
  }

  @Test
  void hasAWordOfItsOwnForEveryLikelihoodWord() {
    assertThat(Likelihood.scale().values().stream().map(ChanceWords::of).distinct())
        .hasSameSizeAs(Likelihood.scale().keySet());
  }
}
