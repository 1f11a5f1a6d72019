package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinutesTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0 min",
    "0.2, 1 min",
    "1.4, 1 min",
    "1.5, 2 min",
    "59.4, 59 min",
    "59.5, 1 h",
    "90, 1 h 30 min",
    "240, 4 h"
  })
  void saysMinutesAsPeopleDo(double minutes, String words) {
    assertThat(Minutes.words(minutes)).isEqualTo(words);
  }
}
