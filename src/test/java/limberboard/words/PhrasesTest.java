package limberboard.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhrasesTest {
  @ParameterizedTest
  @CsvSource({
    "'Shut the seacocks first.', seacock",
    "'Shut the seacock first.', seacocks",
    "'While it is charging, look at the plug.', charge",
    "'Bedding the fitting', bed",
    "'SAND it wet', sanding",
    "'Undo the hoses, one by one', hose",
    "'The mast is lowered', lower the mast",
    "'Lower the mast with two people', lower the mast",
    "'Press; press again', press",
    "'Fill it from the can', fill",
  })
  void formsOfWordsAreFound(String text, String phrase) {
    assertThat(new Phrases(text).has(phrase)).isEqualTo(!text.equals("The mast is lowered"));
  }

  @Test
  void partsOfWordsAreNot() {
    assertThat(new Phrases("Look at the standing rigging").has("sand")).isFalse();
    assertThat(new Phrases("Spring cleaning").has("spin")).isFalse();
    assertThat(new Phrases("Alcoholic").has("alcohol")).isFalse();
    assertThat(new Phrases("the mast the lower").has("lower the mast")).isFalse();
    assertThat(new Phrases("Anything").has("")).isFalse();
    assertThat(new Phrases("").has("pin")).isFalse();
  }
}
