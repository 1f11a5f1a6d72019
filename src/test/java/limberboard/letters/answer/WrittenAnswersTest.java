package limberboard.letters.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers by number, as owners write them. */
class WrittenAnswersTest {
  private static final List<AskedCheck> ASKED =
      List.of(
          new AskedCheck("wet", "taste", List.of("salt", "fresh")),
          new AskedCheck("wet", "where", List.of("locker-wet-too", "locker-only", "neither")),
          new AskedCheck("flat", "volts", List.of("rises", "does-not-rise")));

  private static String read(String text) {
    return WrittenAnswers.in(text, ASKED).stream()
        .map(each -> each.check().check() + "=" + each.answer().orElse("?"))
        .collect(Collectors.joining(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 salt | taste=salt",
        "1. Salt! | taste=salt",
        "1: it is salt, I think | taste=salt",
        "1 and “salt” | taste=salt",
        "1 “fresh” | taste=fresh",
        "1) fresh  2) locker wet too  3) rises | taste=fresh where=locker-wet-too volts=rises",
        "1 - cannot tell | taste=?",
        "1: no idea, sorry | taste=?",
        "1: I can't tell | taste=?",
        "2 = Locker-only | where=locker-only",
        "2. neither | where=neither",
        "3: does not rise | volts=does-not-rise",
        "1: not salt | ''",
        "1: salt or fresh, both | ''",
        "4: salt | ''",
        "salt | ''",
        "It took 3 hours and 1 beer | ''",
        "'' | ''"
      })
  void oneLine(String text, String answers) {
    assertThat(read(text)).isEqualTo(answers);
  }

  @Test
  void severalLinesWithWordsBetween() {
    assertThat(read("Hello,\n\n1. fresh\nThe rug is ruined.\n3. does not rise\n\nRegards, Ann"))
        .isEqualTo("taste=fresh volts=does-not-rise");
  }
}
