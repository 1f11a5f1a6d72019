package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which word a misspelt one may be. */
class KnownWordsTest {
  private static final KnownWords WORDS =
      new KnownWords(Stream.of("engine steam, halyard; stream steam", "bilge board boards"));

  @ParameterizedTest
  @CsvSource({
    "enjine, engine", // another letter
    "haylard, halyard", // two swapped
    "steeam, steam", // one too many
    "stam, none", // too short to tell
    "bilge, none", // right as it is
    "hilge, none", // another first letter
    "engines, engine",
    "enjines, none", // two letters apart
    "stteam, steam",
    "sream, steam", // also stream, which is rarer
  })
  void oneLetterApartIsMeant(String written, String meant) {
    assertThat(WORDS.meant(written).orElse("none")).isEqualTo(meant);
  }
}
