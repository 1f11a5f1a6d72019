package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExcerptTest {
  @TempDir Path folder;

  private Excerpt passage(String body, String query, String... synonyms) throws IOException {
    SmallSearchWorkspace workspace = new SmallSearchWorkspace(folder);
    workspace.synonyms(synonyms);
    workspace.page("topics/page", "title: Page", body);
    try (SearchIndex index = workspace.index()) {
      return index.find(SearchQuery.of(query)).hits().get(0).passage();
    }
  }

  private static List<String> marked(Excerpt passage) {
    return passage.marks().stream()
        .map(mark -> passage.text().substring(mark.start(), mark.end()))
        .toList();
  }

  @Test
  void theSentenceThatAnswersBestIsShownWithItsWordsMarked() throws IOException {
    Excerpt passage =
        passage(
            "The pump is red. Grease the pump's handles every spring. Handles are cheap.",
            "greasing pump handle");
    assertThat(passage.text()).isEqualTo("Grease the pump's handles every spring.");
    assertThat(marked(passage)).containsExactly("Grease", "pump's", "handles");
    assertThat(passage.marks())
        .containsExactly(new MarkedSpan(0, 6), new MarkedSpan(11, 17), new MarkedSpan(18, 25));
  }

  @Test
  void misspeltWordsAndBeginningsMarkWhatTheyStandFor() throws IOException {
    assertThat(marked(passage("Bleed the hydraulic ram.", "hydrualic")))
        .containsExactly("hydraulic");
  }

  @Test
  void phrasesThatStandForAnotherWordAreMarkedWhole() throws IOException {
    Excerpt passage = passage("Open the sea cock first.", "hull valve", "sea cock, hull valve");
    assertThat(marked(passage)).containsExactly("sea cock");
  }

  @Test
  void marksHoldInTextWithAccentsAndCharactersBeyondThePlane() throws IOException {
    Excerpt passage =
        passage("\uD83D\uDEA4 A na\u00efve caf\u00e9 \uD83D\uDEA4 \u00dcber pump.", "pump cafe");
    assertThat(marked(passage)).containsExactly("caf\u00e9", "pump");
  }

  @Test
  void aLongSentenceIsCutRoundItsMarks() throws IOException {
    String filler =
        IntStream.range(0, 120).mapToObj(i -> "word" + i).collect(Collectors.joining(" "));
    Excerpt passage = passage(filler + " the keystone here " + filler + ".", "keystone");
    assertThat(passage.text()).startsWith("\u2026").endsWith("\u2026");
    assertThat(passage.text().length()).isLessThan(260);
    assertThat(marked(passage)).containsExactly("keystone");
  }

  @Test
  void oneEndlessWordIsCutToo() throws IOException {
    Excerpt passage = passage("keystone" + " " + "x".repeat(5000), "keystone");
    assertThat(passage.text().length()).isLessThan(260);
    assertThat(marked(passage)).containsExactly("keystone");
  }

  @Test
  void aPageFoundByItsTitleAloneShowsItsBeginning() throws IOException {
    Excerpt passage = passage("First sentence here. Second one.", "page");
    assertThat(passage).isEqualTo(new Excerpt("First sentence here.", List.of()));
  }

  @Test
  void aPageWithoutTextHasAnEmptyPassage() throws IOException {
    assertThat(passage("", "page")).isEqualTo(Excerpt.EMPTY);
  }

  @Test
  void marksMayNotOverlapOrLeaveTheText() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Excerpt("pump", List.of(new MarkedSpan(2, 5))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Excerpt("pump", List.of(new MarkedSpan(0, 3), new MarkedSpan(2, 4))));
    assertThatIllegalArgumentException().isThrownBy(() -> new MarkedSpan(3, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new MarkedSpan(-1, 3));
  }
}
