package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The measure of how hard a text is to read, by hand. */
class ReadabilityTest {
  @ParameterizedTest
  @CsvSource({
    "boat, 1", "water, 2", "leaked, 1", "wanted, 2", "loose, 1", "little, 2", "table, 2",
    "the, 1", "rigging, 2", "caution, 2", "coastguard, 2", "moved, 1", "hydraulic, 3", "plate, 1"
  })
  void syllables(String word, int count) {
    assertThat(Readability.syllables(word)).isEqualTo(count);
  }

  @Test
  void gradeByHand() {
    // Ten words, two sentences, twelve syllables: 0.39 × 5 + 11.8 × 1.2 − 15.59.
    String text = "Lift the cushion and look. Is the locker wet too?";
    assertThat(Readability.grade(text)).isCloseTo(1.95 + 14.16 - 15.59, Offset.offset(1e-9));
  }

  @Test
  void hardTextIsFoundHard() {
    String text =
        "Notwithstanding considerable uncertainty regarding the aforementioned installation,"
            + " comprehensive investigation of the hydraulic pressurisation equipment necessitates"
            + " professional qualification.";
    assertThat(Readability.grade(text)).isGreaterThan(Readability.HARDEST + 5);
  }
}
