package limberboard.library;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MinutesTest {
  @ParameterizedTest
  @CsvSource({
    "0, 1 minute",
    "1.4, 1 minute",
    "1.5, 2 minutes",
    "59.4, 59 minutes",
    "59.5, 1 h",
    "90, 1 h 30 min",
    "240, 4 h"
  })
  void saysMinutesAsPeopleDo(double minutes, String words) {
    assertThat(Minutes.words(minutes)).isEqualTo(words);
  }
}
