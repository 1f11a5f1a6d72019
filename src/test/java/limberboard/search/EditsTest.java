package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import limberboard.library.problem.Nearest;
import org.apache.lucene.search.spell.LuceneLevenshteinDistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class EditsTest {
  /**
   * Published examples: kitten/sitting is 3 and Saturday/Sunday 3 in the usual accounts of
   * Levenshtein's distance; CA/ABC is 3 by optimal string alignment, where it is 2 by the full
   * Damerau distance. All from memory.
   */
  @ParameterizedTest
  @CsvSource({"kitten,sitting,3", "saturday,sunday,3", "ca,abc,3", "'',abc,3", "ab,ba,1", "a,a,0"})
  void publishedExamples(String one, String other, int edits) {
    assertThat(Nearest.distance(one, other)).isEqualTo(edits);
    assertThat(Nearest.distance(other, one)).isEqualTo(edits);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "misspellings.csv", numLinesToSkip = 1)
  void misspellingsAreAsFarFromTheirWordsAsCountedByHand(String wrong, String right, int edits) {
    assertThat(Nearest.distance(wrong, right)).isEqualTo(edits);
  }

  /** Lucene computes the same distance, as a share of the shorter word. */
  @Test
  void luceneAgrees() {
    LuceneLevenshteinDistance lucene = new LuceneLevenshteinDistance();
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      String one = word(random);
      String other = word(random);
      int edits = Nearest.distance(one, other);
      float share = 1 - (float) edits / Math.min(one.length(), other.length());
      assertThat(lucene.getDistance(one, other)).isEqualTo(share);
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    random.ints(1 + random.nextInt(7), 'a', 'd').forEach(letter -> word.append((char) letter));
    return word.toString();
  }

  @ParameterizedTest
  @CsvSource({
    "enjine,engine,true", "keal,keel,true", "keal,seal,false", "wotar,water,true",
    "fone,phone,true", "nob,knob,true", "rench,wrench,true", "bridge,brij,true",
    "klutch,clutch,true", "posision,position,true", "strap,start,false", "steem,steam,true",
  })
  void wordsThatSoundAlikeHaveOneKey(String one, String other, boolean alike) {
    assertThat(SoundKey.of(one).equals(SoundKey.of(other))).isEqualTo(alike);
  }
}
