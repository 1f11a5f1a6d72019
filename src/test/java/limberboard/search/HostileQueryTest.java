package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Any text is safe to look for, and none of it is syntax. */
class HostileQueryTest {
  @TempDir Path folder;
  private SearchIndex index;

  @BeforeEach
  void fill() throws IOException {
    SmallSearchWorkspace workspace = SmallSearchWorkspace.filled(folder);
    workspace.synonyms("hatch, lid of the deck, opening");
    index = workspace.index();
  }

  @AfterEach
  void close() throws IOException {
    index.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hatch AND",
        "hatch OR (",
        "\"hatch",
        "hatch~",
        "hatch*",
        "dry.Hatch",
        "a_hatch",
        "-hatch",
        "!hatch",
        "title:hatch",
        "hatch^4",
        "[hatch TO",
        "{!func}hatch",
        "hatch\\",
        "/hatch/",
        "*:* hatch",
        "<b>hatch</b>",
        "hatch;DROP TABLE",
        "hatch\u0000",
        "hatch\uD83D",
        "\uFEFFhatch",
        "h\u0301atch hatch",
      })
  void nothingIsSyntax(String text) throws IOException {
    assertThat(SmallSearchWorkspace.ids(index, text)).contains("renew-hatch-gasket");
  }

  @Test
  void tenThousandCharactersOfPunctuationAreNothing() throws IOException {
    StringBuilder punctuation = new StringBuilder();
    Random random = new Random(7);
    String signs = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";
    while (punctuation.length() < 10_000) {
      punctuation.append(signs.charAt(random.nextInt(signs.length())));
    }
    SearchQuery query = SearchQuery.of(punctuation.toString());
    assertThat(index.find(query).hits()).isEmpty();
    assertThat(index.find(query.whileTyping()).hits()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "hatch ", "hatchx ", "=0 ", "\uD83D\uDEA4 ", "lid of the ", "ab\n"})
  void aVeryLongTextIsAnswered(String part) throws IOException {
    String text = part.repeat(100_000 / part.length());
    SearchResults results = index.find(SearchQuery.of(text).whileTyping());
    assertThat(results.hits().size()).isLessThanOrEqualTo(SearchQuery.USUAL_LIMIT);
    assertThat(results.didYouMean()).isEmpty();
  }

  @Test
  void aThousandDifferentWordsAreAnswered() throws IOException {
    StringBuilder words = new StringBuilder("hatch ");
    Random random = new Random(11);
    for (int i = 0; i < 1000; i++) {
      random.ints(6, 'a', 'z' + 1).forEach(letter -> words.append((char) letter));
      words.append(' ');
    }
    assertThat(SmallSearchWorkspace.ids(index, words.toString())).contains("renew-hatch-gasket");
  }

  @Test
  void randomTextsAreAnswered() throws IOException {
    Random random = new Random(13);
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      random
          .ints(random.nextInt(40), 0, random.nextBoolean() ? 0x80 : 0x10FFFF)
          .forEach(text::appendCodePoint);
      for (Hit hit : index.find(SearchQuery.of(text.toString()).whileTyping()).hits()) {
        assertThat(hit.score()).isPositive();
      }
    }
  }

  @Test
  void marksOfGroupsCannotBeAskedFor() throws IOException {
    assertThat(index.find(SearchQuery.of("=0")).hits()).isEmpty();
  }
}
