package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import limberboard.letters.recognise.TextRegression.Example;
import org.junit.jupiter.api.Test;

/** The regression over what texts have. */
class TextRegressionTest {
  private static final double HARDLY_HELD_BACK = 1e5;

  private static List<Example> texts(Set<String> keys, int so, int not) {
    List<Example> texts =
        new ArrayList<>(Collections.nCopies(so, new Example(() -> keys, true, 1)));
    texts.addAll(Collections.nCopies(not, new Example(() -> keys, false, 1)));
    return texts;
  }

  /**
   * With one word that is there or not, the likeliest chances are the shares themselves (A.
   * Agresti, Categorical Data Analysis, section on logistic regression with a binary predictor).
   */
  @Test
  void ofATwoByTwoTableTheChancesAreTheShares() {
    List<Example> texts = texts(Set.of("water"), 30, 10);
    texts.addAll(texts(Set.of(), 10, 30));
    TextRegression learnt = new TextRegression(texts, HARDLY_HELD_BACK);
    assertThat(learnt.chance(Set.of("water"))).isCloseTo(0.75, within(0.01));
    assertThat(learnt.chance(Set.of())).isCloseTo(0.25, within(0.01));
    assertThat(learnt.chance(Set.of("never met"))).isCloseTo(0.25, within(0.01));
  }

  @Test
  void aStrongerPenaltyBringsChancesNearer() {
    List<Example> texts = texts(Set.of("water"), 30, 10);
    texts.addAll(texts(Set.of(), 10, 30));
    double held = new TextRegression(texts, 0.01).chance(Set.of("water"));
    assertThat(held).isBetween(0.5, 0.7);
  }

  @Test
  void theSameTextsTeachTheSame() {
    List<Example> texts = texts(Set.of("water", "rises"), 9, 3);
    texts.addAll(texts(Set.of("thanks", "water"), 2, 8));
    assertThat(new TextRegression(texts, 10).chance(Set.of("water")))
        .isEqualTo(new TextRegression(texts, 10).chance(Set.of("water")));
  }

  @Test
  void aTextThatCountsSeveralTimesTeachesWhatItsCopiesDo() {
    List<Example> copies = texts(Set.of("water", "rises"), 9, 3);
    copies.addAll(texts(Set.of("thanks", "water"), 2, 8));
    List<Example> counted =
        List.of(
            new Example(() -> Set.of("water", "rises"), true, 9),
            new Example(() -> Set.of("water", "rises"), false, 3),
            new Example(() -> Set.of("thanks", "water"), true, 2),
            new Example(() -> Set.of("thanks", "water"), false, 8));
    for (Set<String> keys : List.of(Set.of("water"), Set.of("rises"), Set.of("thanks"))) {
      assertThat(new TextRegression(counted, 10).chance(keys))
          .isEqualTo(new TextRegression(copies, 10).chance(keys));
    }
  }

  @Test
  void textsOfOneSideOnlyOrNoneTeachTheirShare() {
    assertThat(new TextRegression(List.of(), 10).chance(Set.of("water"))).isZero();
    assertThat(new TextRegression(texts(Set.of("water"), 3, 0), 10).chance(Set.of())).isEqualTo(1);
  }

  @Test
  void severalSortsAtOnceAreLearntAsOneByOne() {
    List<Set<String>> texts =
        List.of(Set.of("water", "cabin"), Set.of("water"), Set.of("motor"), Set.of("motor", "hot"));
    List<Set<Integer>> sorts = List.of(Set.of(0), Set.of(0), Set.of(1), Set.of());
    List<TextRegression> together = TextRegression.ofSorts(texts, sorts, 3, 5);
    for (int sort = 0; sort < 3; sort++) {
      List<Example> own = new ArrayList<>();
      for (int i = 0; i < texts.size(); i++) {
        Set<String> text = texts.get(i);
        own.add(new Example(() -> text, sorts.get(i).contains(sort), 1));
      }
      TextRegression alone = new TextRegression(own, 5);
      for (Set<String> text : texts) {
        assertThat(together.get(sort).chance(text)).isCloseTo(alone.chance(text), within(1e-12));
      }
    }
    assertThat(together.get(2).chance(Set.of("water"))).isZero();
  }
}
