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

class PassageTest {
  @TempDir Path folder;

  private Passage passage(String body, String query, String... synonyms) throws IOException {
    SmallWorkspace workspace = new SmallWorkspace(folder);
    workspace.synonyms(synonyms);
    workspace.page("topics/page", "title: Page", body);
    try (SearchIndex index = workspace.index()) {
      return index.find(SearchQuery.of(query)).hits().get(0).passage();
    }
  }

  @Test
  void theSentenceThatAnswersBestIsShownWithItsWordsMarked() throws IOException {
    Passage passage =
        passage(
            "The pump is red. Grease the pump's handles every spring. Handles are cheap.",
            "greasing pump handle");
    assertThat(passage.text()).isEqualTo("Grease the pump's handles every spring.");
    assertThat(passage.marked()).containsExactly("Grease", "pump's", "handles");
    assertThat(passage.marks()).containsExactly(new Mark(0, 6), new Mark(11, 17), new Mark(18, 25));
  }

  @Test
  void misspeltWordsAndBeginningsMarkWhatTheyStandFor() throws IOException {
    assertThat(passage("Bleed the hydraulic ram.", "hydrualic").marked())
        .containsExactly("hydraulic");
  }

  @Test
  void phrasesThatStandForAnotherWordAreMarkedWhole() throws IOException {
    Passage passage = passage("Open the sea cock first.", "hull valve", "sea cock, hull valve");
    assertThat(passage.marked()).containsExactly("sea cock");
  }

  @Test
  void marksHoldInTextWithAccentsAndCharactersBeyondThePlane() throws IOException {
    Passage passage =
        passage("\uD83D\uDEA4 A na\u00efve caf\u00e9 \uD83D\uDEA4 \u00dcber pump.", "pump cafe");
    assertThat(passage.marked()).containsExactly("caf\u00e9", "pump");
  }

  @Test
  void aLongSentenceIsCutRoundItsMarks() throws IOException {
    String filler =
        IntStream.range(0, 120).mapToObj(i -> "word" + i).collect(Collectors.joining(" "));
    Passage passage = passage(filler + " the keystone here " + filler + ".", "keystone");
    assertThat(passage.text()).startsWith("\u2026").endsWith("\u2026");
    assertThat(passage.text().length()).isLessThan(260);
    assertThat(passage.marked()).containsExactly("keystone");
  }

  @Test
  void oneEndlessWordIsCutToo() throws IOException {
    Passage passage = passage("keystone" + " " + "x".repeat(5000), "keystone");
    assertThat(passage.text().length()).isLessThan(260);
    assertThat(passage.marked()).containsExactly("keystone");
  }

  @Test
  void aPageFoundByItsTitleAloneShowsItsBeginning() throws IOException {
    Passage passage = passage("First sentence here. Second one.", "page");
    assertThat(passage).isEqualTo(new Passage("First sentence here.", List.of()));
  }

  @Test
  void aPageWithoutTextHasAnEmptyPassage() throws IOException {
    assertThat(passage("", "page")).isEqualTo(Passage.EMPTY);
  }

  @Test
  void marksMayNotOverlapOrLeaveTheText() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Passage("pump", List.of(new Mark(2, 5))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Passage("pump", List.of(new Mark(0, 3), new Mark(2, 4))));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mark(3, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Mark(-1, 3));
  }
}
