package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import limberboard.library.Library;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;
  private SearchIndex index;

  @BeforeEach
  void fill() throws IOException {
    workspace = SmallSearchWorkspace.filled(folder);
    index = workspace.index();
  }

  @AfterEach
  void close() throws IOException {
    index.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title            | water in the bow cabin  | wet-bunk",
        "said as          | wet bunk cushions       | wet-bunk",
        "answer's phrase  | trickles at the coaming | wet-bunk",
        "cause            | leaking cleat bolt      | wet-bunk",
        "cause's about    | lost its spring         | wet-bunk",
        "summary          | damp bedding            | wet-bunk",
        "zone             | bow-cabin               | wet-bunk",
        "heading          | old gasket out          | renew-hatch-gasket",
        "body             | groove                  | renew-hatch-gasket",
        "table            | narrow                  | renew-hatch-gasket",
        "material used    | gasket rubber           | renew-hatch-gasket",
        "system           | deck mooring            | bed-cleat",
        "caution's danger | giddy                   | solvent-fumes",
        "inflected        | scrapers                | scraper",
        "beginning        | how hydraulics work     | how-hydraulics-work",
      })
  void everyPartOfAPageIsFound(String part, String text, String id) throws IOException {
    assertThat(ids(index, text)).as(part).isNotEmpty().first().isEqualTo(id);
  }

  @Test
  void everyTitleFindsItsPageFirst() throws IOException {
    for (Page<?> page : workspace.library().pages()) {
      assertThat(ids(index, page.title())).first().isEqualTo(page.id());
    }
  }

  @Test
  void aSymptomComesBeforeOtherKindsWhenWhatIsWrongIsDescribed() throws IOException {
    assertThat(ids(index, "leaking gasket")).startsWith("wet-bunk").contains("renew-hatch-gasket");
  }

  @Test
  void aLetterOfWhichMostWordsAreInNoPageFindsTheSymptom() throws IOException {
    String letter =
        "Hi there, hope you are well. After the bank holiday my brother in law and I came down, and"
            + " would you believe it, there was a puddle on the bed and Aunt Mabel's tartan rug was"
            + " ruined! Kind regards";
    assertThat(ids(index, letter)).first().isEqualTo("wet-bunk");
  }

  @Test
  void onlyTheKindsAskedForAreFound() throws IOException {
    SearchResults results =
        index.find(SearchQuery.of("strip").among(Set.of(Kind.PROCEDURE, Kind.MATERIAL)));
    assertThat(results.hits())
        .isNotEmpty()
        .extracting(Hit::kind)
        .containsOnly(Kind.PROCEDURE, Kind.MATERIAL);
  }

  @Test
  void noMoreHitsAreGivenThanAskedFor() throws IOException {
    assertThat(index.find(SearchQuery.of("hatch cleat")).hits()).hasSizeGreaterThan(2);
    assertThat(index.find(SearchQuery.of("hatch cleat").atMost(2)).hits()).hasSize(2);
    assertThat(index.find(SearchQuery.of("hatch").atMost(Integer.MAX_VALUE)).hits()).isNotEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> SearchQuery.of("hatch").atMost(0));
  }

  @Test
  void hitsComeInOrderOfTheirScores() throws IOException {
    List<Double> scores =
        index.find(SearchQuery.of("hatch gasket")).hits().stream().map(Hit::score).toList();
    assertThat(scores).hasSizeGreaterThan(2).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(scores).allMatch(score -> score > 0);
  }

  @ParameterizedTest
  @CsvSource({"h", "ha", "hat", "gask", "renew the hatch ga", "hydraul"})
  void whatIsBeingTypedIsTakenAsABeginning(String text) throws IOException {
    assertThat(index.find(SearchQuery.of(text).whileTyping()).hits()).isNotEmpty();
  }

  @Test
  void eachLetterTypedNarrows() throws IOException {
    assertThat(ids(index.find(SearchQuery.of("mooring cl").whileTyping()))).startsWith("bed-cleat");
    assertThat(ids(index.find(SearchQuery.of("hydrua").whileTyping())))
        .as("a beginning with swapped letters")
        .contains("how-hydraulics-work");
  }

  @Test
  void aWordFollowedByASpaceIsFinished() throws IOException {
    assertThat(ids(index.find(SearchQuery.of("gas").whileTyping()))).contains("renew-hatch-gasket");
    assertThat(index.find(SearchQuery.of("ga ").whileTyping()).hits()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"'',0", "' ',0", "'\t\n',0", "!?,0", "zzzzqqqq,0", "the and of,0"})
  void withoutWordsNothingIsFound(String text, int hits) throws IOException {
    assertThat(index.find(SearchQuery.of(text)).hits()).hasSize(hits);
    assertThat(index.find(SearchQuery.of(text).whileTyping()).didYouMean()).isEmpty();
  }

  @Test
  void aLibraryWithoutPagesIsSearchedInVain() throws IOException {
    UpdateReport report = index.update(Library.empty());
    assertThat(report.removed()).isEqualTo(7);
    assertThat(index.find(SearchQuery.of("hatch").whileTyping())).isEqualTo(SearchResults.none());
  }

  @Test
  void anIndexThatWasNeverUpdatedFindsNothing() throws IOException {
    SmallSearchWorkspace other = new SmallSearchWorkspace(folder.resolve("other"));
    try (SearchIndex fresh = SearchIndex.open(other.folders())) {
      assertThat(fresh.find(SearchQuery.of("hatch"))).isEqualTo(SearchResults.none());
      assertThat(other.folders().searchIndex()).as("opening writes nothing").doesNotExist();
    }
  }

  @Test
  void aClosedIndexSaysSo() throws IOException {
    index.close();
    index.close();
    assertThatIOException()
        .isThrownBy(() -> index.find(SearchQuery.of("hatch")))
        .withMessageContaining("closed");
    assertThatIOException()
        .isThrownBy(() -> index.update(Library.empty()))
        .withMessageContaining("closed");
  }
}
