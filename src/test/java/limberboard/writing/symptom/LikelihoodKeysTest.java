package limberboard.writing.symptom;

import static org.assertj.core.api.Assertions.assertThat;

import limberboard.library.value.Likelihood;
import org.junit.jupiter.api.Test;

/** One key for each word. */
class LikelihoodKeysTest {
  @Test
  void everyWordHasAKeyOfItsOwn() {
    for (String word : Likelihood.scale().keySet()) {
      assertThat(LikelihoodKeys.keys(word)).as(word).isNotEmpty();
      for (String key : LikelihoodKeys.keys(word)) {
        assertThat(LikelihoodKeys.word(key.charAt(0))).contains(word);
      }
    }
  }

  @Test
  void digitsRise() {
    double before = 0;
    for (char digit = '0'; digit <= '9'; digit++) {
      double value = Likelihood.parse(LikelihoodKeys.word(digit).orElseThrow()).value();
      assertThat(value).isGreaterThan(before);
      before = value;
    }
    assertThat(LikelihoodKeys.word('5')).contains("even");
    assertThat(LikelihoodKeys.word('A')).contains("always");
    assertThat(LikelihoodKeys.word('x')).isEmpty();
  }

  @Test
  void wordsPerCentsAndSharesMayBeTyped() {
    assertThat(LikelihoodKeys.typed(" Very often ")).contains("very-often");
    assertThat(LikelihoodKeys.typed("70 %")).contains("0.7");
    assertThat(LikelihoodKeys.typed("0.25")).contains("0.25");
    assertThat(LikelihoodKeys.typed("101%")).isEmpty();
    assertThat(LikelihoodKeys.typed("1.5")).isEmpty();
    assertThat(LikelihoodKeys.typed("mostly")).isEmpty();
  }
}
