package limberboard.letters.reply;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What letters without a fault are about. */
class MattersTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Could you lift her out in October? | booking",
        "A place in the hall again, and the crane on the 5th, please. | booking",
        "I watched your two lads lift her in a crosswind like an egg. Thanks! | thanks",
        "Her keel goes up like a lift. Could you send us a line for the wall? | question",
        "How often is the gland packed? | question",
        "Thank you, she works perfectly. | thanks",
        "Our catalogue has arrived. | ''",
      })
  void theFirstLineThatHoldsDecides(String letter, String matter) {
    assertThat(new Matters().of(letter)).isEqualTo(matter);
  }
}
