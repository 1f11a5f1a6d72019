package limberboard.library.value;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FigureValueTest {
  private static FigureValue of(String text) {
    return FigureValue.parse(text);
  }

  /** BIPM, The International System of Units, 9th edition, table 8: minute, hour and day. */
  @ParameterizedTest
  @CsvSource({
    "24 h, one day",
    "48 hours, two days",
    "10 min, ten minutes",
    "90 s, 1.5 min",
    "half an hour, 30 min",
    "a week, 7 days",
    "1 kN, 1000 N",
    "13 N·m, 13 Nm",
    "30 mA, 0.03 A",
    "14.4 to 14.7 V, 14.4–14.7 V",
    "50 g a litre, 50 g/l",
    "2 cm, 20 mm",
    "-5 °C, −5 °C"
  })
  void saysTheSameInOtherWords(String one, String other) {
    assertThat(of(one).isLike(of(other))).isTrue();
    assertThat(of(one).equalTo(of(other))).as("%s, %s", of(one), of(other)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"24 h, 36 h", "10 to 12 N·m, 10 N·m", "10 to 12 N·m, 10 to 13 N·m", "20 mm, 20 cm"})
  void saysSomethingElse(String one, String other) {
    assertThat(of(one).isLike(of(other))).isTrue();
    assertThat(of(one).equalTo(of(other))).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"24 h, 24 N·m", "12 V, 12 A", "20 mm, 20 mm²", "10 N, 10 kg"})
  void measuresSomethingElse(String one, String other) {
    assertThat(of(one).isLike(of(other))).isFalse();
    assertThat(of(one).equalTo(of(other))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "soon", "h", "the sealant", "about 24 h", "24 h or so at 15 °C"})
  void whatIsNoFigureIsSaid(String text) {
    assertThatThrownBy(() -> of(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("(?s)(.* is no figure with a unit|the unit .* is not known); .*");
    assertThat(FigureValue.in(text)).isEmpty();
  }

  @Test
  void aMissingOrUnknownUnitIsSaid() {
    assertThatThrownBy(() -> of("24")).hasMessageStartingWith("\"24\" has no unit; write");
    assertThatThrownBy(() -> of("24 hrs"))
        .hasMessageStartingWith("the unit \"hrs\" is not known; use one of mm, cm, m,");
  }

  @Test
  void aRangeIsReadFromLeastToMost() {
    FigureValue range = of("14.7 to\n  14.4 V");
    assertThat(range.written()).isEqualTo("14.7 to 14.4 V");
    assertThat(range.least().getValue().doubleValue()).isEqualTo(14.4);
    assertThat(range.most().getValue().doubleValue()).isEqualTo(14.7);
  }
}
