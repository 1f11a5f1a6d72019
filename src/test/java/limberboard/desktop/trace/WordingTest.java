package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordingTest {
  @ParameterizedTest
  @CsvSource({
    "0,under 1 %",
    "0.004,under 1 %",
    "0.006,1 %",
    "0.5,50 %",
    "0.994,99 %",
    "1,over 99 %"
  })
  void chancesAreNeverCalledCertain(double chance, String words) {
    assertThat(Wording.percent(chance)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "0.2,1 minute",
    "1,1 minute",
    "45,45 minutes",
    "60,1 hour",
    "75,1¼ hours",
    "90,1½ hours",
    "240,4 hours"
  })
  void minutesAreSaidAsPeopleSayThem(double minutes, String words) {
    assertThat(Wording.minutes(minutes)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"runs-from-screw,Runs from screw", "salt,Salt", "'',''"})
  void answersAreReadWithoutHyphens(String answer, String words) {
    assertThat(Wording.answer(answer)).isEqualTo(words);
  }
}
