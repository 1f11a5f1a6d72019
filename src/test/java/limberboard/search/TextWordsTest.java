package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.TextWords.TextWord;
import org.junit.jupiter.api.Test;

/** The words of a text as search reads them. */
class TextWordsTest {
  private static final TextWords WORDS =
      TextWords.read(
          new WorkspaceFolders(Path.of("")),
          List.of(List.of("pong", "bad air", "reek"), List.of("quokka")));

  @Test
  void wordsHaveStemsAndPlaces() {
    String text = "Whimbrel's batteries, dripping";
    List<TextWord> words = WORDS.of(text);
    assertThat(words)
        .extracting(TextWord::word)
        .containsExactly("whimbrel", "batteries", "dripping");
    assertThat(words).extracting(TextWord::stem).containsExactly("whimbrel", "batteri", "drip");
    assertThat(text.substring(words.get(1).start(), words.get(1).end())).isEqualTo("batteries");
    assertThat(words.get(2).fault()).isTrue();
    assertThat(words.get(0).fault()).isFalse();
  }

  @Test
  void tradeSpellingsArePutRight() {
    assertThat(WORDS.of("the bildge").get(1).word()).isEqualTo("bilge");
  }

  @Test
  void wordsOfOneGroupHaveOneMarkAndAPhraseMarksAllItsWords() {
    Set<String> pong = WORDS.of("pong").get(0).marks();
    List<TextWord> air = WORDS.of("what bad air");
    assertThat(pong).isNotEmpty();
    assertThat(air.get(1).marks()).containsAll(pong);
    assertThat(air.get(2).marks()).containsAll(pong);
    assertThat(air.get(0).marks()).doesNotContainAnyElementsOf(pong);
    assertThat(WORDS.of("quokka").get(0).marks()).doesNotContainAnyElementsOf(pong);
  }

  @Test
  void grammarAndFaintWordsAreMarked() {
    assertThat(WORDS.of("the").get(0).stop()).isTrue();
    assertThat(WORDS.of("monday").get(0).faint()).isTrue();
    assertThat(WORDS.of("keel").get(0).stop()).isFalse();
  }
}
