package limberboard.workings;

import static org.assertj.core.api.Assertions.assertThat;

import limberboard.library.value.QuantityText;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities in words. */
class QuantityWordsTest {
  /** Factors as in NIST Special Publication 811, appendix B.8, from memory: seven figures. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "25.4 mm|IMPERIAL|25.4 mm (1 in)",
        "6 mm|IMPERIAL|6 mm (0.236 in)",
        "3.048 m|IMPERIAL|3.048 m (10 ft)",
        "9.290304 m2|IMPERIAL|9.290304 m² (100 sq ft)",
        "645.16 mm2|IMPERIAL|645.16 mm² (1 sq in)",
        "453.59237 g|IMPERIAL|453.59237 g (1 lb)",
        "28.34952 g|IMPERIAL|28.34952 g (1 oz)",
        "4.448222 N|IMPERIAL|4.448222 N (1 lbf)",
        "4.54609 l|IMPERIAL|4.54609 l (1 imperial gal)",
        "28.41306 ml|IMPERIAL|28.41306 ml (1 imperial fl oz)",
        "3.785412 l|US_CUSTOMARY|3.785412 l (1 US gal)",
        "29.57353 ml|US_CUSTOMARY|29.57353 ml (1 US fl oz)",
        "290 ml|US_CUSTOMARY|290 ml (9.81 US fl oz)",
        "290 ml|IMPERIAL|290 ml (10.2 imperial fl oz)",
        "25.4 mm|US_CUSTOMARY|25.4 mm (1 in)",
        "290 ml|NOTHING|290 ml",
        "90 min|IMPERIAL|90 min",
        "4|IMPERIAL|4"
      })
  void otherUnitsStandBesideTheMetricOnes(String text, UnitsBeside beside, String expected) {
    assertThat(new QuantityWords(beside).written(QuantityText.parse(text))).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "7200 ml, 7.2 l", "0.0072 l, 7.2 ml", "999 ml, 999 ml", "1 l, 1 l", "12345 g, 12.3 kg",
    "0.4 m, 0.4 m", "123456 m, 123456 m", "0 ml, 0 ml", "1.5 kN, 1.5 kN", "132, 132"
  })
  void computedQuantitiesAreHandyAndToThreeFigures(String text, String expected) {
    assertThat(QuantityWords.METRIC.computed(QuantityText.parse(text))).isEqualTo(expected);
  }

  @Test
  void numbersHaveNoExponents() {
    assertThat(QuantityWords.plain(1e9)).isEqualTo("1000000000");
    assertThat(QuantityWords.plain(0.00001)).isEqualTo("0.00001");
  }

  @Property(seed = "20261125")
  void whatIsWrittenIsReadBackAsTheSame(
      @ForAll @DoubleRange(min = 0.01, max = 10_000) double number,
      @ForAll @IntRange(min = 0, max = 8) int unit) {
    String[] units = {" mm", " cm", " m", " ml", " l", " g", " kg", " N", " min"};
    String text = QuantityWords.plain(Math.round(number * 1000) / 1000.0 + 0.001) + units[unit];
    assertThat(QuantityWords.METRIC.written(QuantityText.parse(text))).isEqualTo(text);
  }
}
