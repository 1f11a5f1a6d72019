package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PerCentTest {
  @ParameterizedTest
  @CsvSource({
    "0,0 %",
    "0.004,under 1 %",
    "0.006,1 %",
    "0.5,50 %",
    "0.994,99 %",
    "0.995,over 99 %",
    "1,100 %"
  })
  void onlyWhatIsCertainIsCalledCertain(double chance, String words) {
    assertThat(PerCent.words(chance)).isEqualTo(words);
  }
}
