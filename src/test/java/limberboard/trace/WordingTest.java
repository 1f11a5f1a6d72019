package limberboard.trace;

import static org.assertj.core.api.Assertions.assertThat;

import limberboard.library.Likelihood;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {

  @ParameterizedTest
  @CsvSource({"0, 0 %", "0.002, under 1 %", "0.123, 12 %", "0.998, over 99 %", "1, 100 %"})
  void saysPerCent(double chance, String said) {
    assertThat(Wording.percent(chance)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "1.75, twice as likely",
    "2.4, twice as likely",
    "2.5, three times as likely",
    "10.4, ten times as likely",
    "11, more than ten times as likely",
    "Infinity, more than ten times as likely"
  })
  void saysFactors(double factor, String said) {
    assertThat(Wording.times(factor)).isEqualTo(said);
  }

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
    assertThat(ChanceWord.of(chance)).isEqualTo(said);
  }

  @Test
  void hasAWordOfItsOwnForEveryLikelihoodWord() {
    assertThat(Likelihood.scale().values().stream().map(ChanceWord::of).distinct())
        .hasSameSizeAs(Likelihood.scale().keySet());
  }
}
