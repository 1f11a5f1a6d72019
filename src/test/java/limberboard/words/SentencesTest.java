package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SentencesTest {
  @ParameterizedTest
  @CsvSource({"runs-from-screw,Runs from screw", "salt,Salt", "'',''"})
  void answersAreReadWithoutHyphens(String answer, String words) {
    assertThat(Sentences.capital(Sentences.spoken(answer))).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"Keel box,keel box", "VHF set,VHF set", "T 26,T 26", "A,a", "'',''"})
  void aTitleBeginsSmallUnlessItIsAnAbbreviation(String title, String words) {
    assertThat(Sentences.lowered(title)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"'',''", "a,a", "a b,a or b", "a b c,'a, b or c'"})
  void listsEndInAWord(String parts, String words) {
    assertThat(Sentences.list(List.of(parts.split(" ")), "or")).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"0,0 checks,no", "1,1 check,one", "10,10 checks,ten", "11,11 checks,11"})
  void countsAreSaid(int number, String counted, String word) {
    assertThat(CountWords.of(number, "check")).isEqualTo(counted);
    assertThat(CountWords.word(number)).isEqualTo(word);
  }
}
