package limberboard.letters.recognise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import limberboard.letters.recognise.WordRegression.Example;
import org.junit.jupiter.api.Test;

/**
 * The worked example of multinomial naive Bayes in C. Manning, P. Raghavan and H. Schütze,
 * Introduction to Information Retrieval (2008), example 13.1, with each word of a text counted once
 * (from memory): four texts, of which three are about China, and a fifth to be told.
 */
class NaiveBayesTest {
  private static final int CHINA = 0;
  private static final int OTHER = 1;

  private static Example text(int topic, String... words) {
    return new Example(Set.of(words), Set.of(topic), 1);
  }

  private final NaiveBayes bayes =
      new NaiveBayes(
          List.of(
              text(CHINA, "chinese", "beijing"),
              text(CHINA, "chinese", "shanghai"),
              text(CHINA, "chinese", "macao"),
              text(OTHER, "tokyo", "japan", "chinese")),
          2);

  @Test
  void theTopicOfMostOfTheWordsComesFirst() {
    assertThat(bayes.ranked(Set.of("chinese", "beijing"))).containsExactly(CHINA, OTHER);
    assertThat(bayes.ranked(Set.of("tokyo", "japan"))).containsExactly(OTHER, CHINA);
  }

  @Test
  void ofUnknownWordsTheMoreUsualTopicComesFirst() {
    assertThat(bayes.ranked(Set.of("osaka"))).containsExactly(CHINA, OTHER);
  }
}
