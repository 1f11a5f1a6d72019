package limberboard.search;

import static limberboard.search.SmallSearchWorkspace.ids;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MisspeltTest {
  @TempDir Path folder;
  private SmallSearchWorkspace workspace;

  @BeforeEach
  void fill() {
    workspace = SmallSearchWorkspace.filled(folder);
  }

  @ParameterizedTest
  @CsvSource({
    "hydrualic, how-hydraulics-work, hydraulic",
    "hidraulik, how-hydraulics-work, hydraulic",
    "hydrolics, how-hydraulics-work, hydraulics",
    "cushoins, wet-bunk, cushions",
    "gasktes, renew-hatch-gasket, gasket",
    "mooring claet, bed-cleat, mooring cleat",
    "oli, how-hydraulics-work, oil",
  })
  void misspeltWordsAreForgivenAndPutRight(String text, String id, String meant)
      throws IOException {
    try (SearchIndex index = workspace.index()) {
      SearchResults results = index.find(SearchQuery.of(text));
      assertThat(ids(results)).contains(id);
      assertThat(results.didYouMean()).contains(meant);
    }
  }

  @ParameterizedTest
  @CsvSource({"ol", "xil", "hytrolucs", "oilskin"})
  void wordsTooShortOrTooFarAreNotGuessedAt(String text) throws IOException {
    try (SearchIndex index = workspace.index()) {
      assertThat(index.find(SearchQuery.of(text)).didYouMean()).isEmpty();
    }
  }

  @Test
  void wellSpeltTextIsNotPutRight() throws IOException {
    try (SearchIndex index = workspace.index()) {
      assertThat(index.find(SearchQuery.of("Renew the hatch gasket!")).didYouMean()).isEmpty();
      assertThat(index.find(SearchQuery.of("gaskets leaked")).didYouMean())
          .as("other forms of a word that is known")
          .isEmpty();
    }
  }

  @Test
  void onlyTheMisspeltWordsOfATextAreReplaced() throws IOException {
    try (SearchIndex index = workspace.index()) {
      assertThat(index.find(SearchQuery.of("Hydraulic OLI, in the cylindre?")).didYouMean())
          .contains("Hydraulic oil, in the cylinder?");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "fore hatch, wet-bunk",
    "for hatch, wet-bunk",
    "bowcabin, wet-bunk",
    "rubberstrip, rubber-strip"
  })
  void compoundsMayBeWrittenApartOrTogether(String text, String id) throws IOException {
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, text)).contains(id);
    }
  }

  @Test
  void tradeSpellingsArePutRightBeforeAnythingElse() throws IOException {
    workspace.spellings("hydraulic: high drollick, hydro", "cleat: kleet, cleet");
    workspace.synonyms("cleat, belaying point");
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "high drollick")).contains("how-hydraulics-work");
      SearchResults results = index.find(SearchQuery.of("Kleet nuts"));
      assertThat(ids(results)).first().isEqualTo("bed-cleat");
      assertThat(results.didYouMean()).contains("cleat nuts");
    }
  }

  @Test
  void synonymsWorkBothWaysForWordsAndPhrasesAndInflected() throws IOException {
    workspace.synonyms("gasket, weather seal, door rubber", "cylinder, ram");
    workspace.topic("doors", "About locker lids", "A weather seal keeps rain out.");
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "door rubbers")).contains("renew-hatch-gasket", "doors");
      assertThat(ids(index, "gasket")).contains("doors", "renew-hatch-gasket");
      assertThat(ids(index, "the weather seals")).contains("renew-hatch-gasket");
      assertThat(ids(index, "rams")).containsExactly("how-hydraulics-work");
      assertThat(ids(index, "door")).as("half a phrase is not the phrase").isEmpty();
    }
  }

  @Test
  void aPhraseOfWordsThatSayNothingMaySaySomethingTogether() throws IOException {
    workspace.synonyms("giddy, not quite there");
    try (SearchIndex index = workspace.index()) {
      assertThat(ids(index, "he was not quite there")).containsExactly("solvent-fumes");
    }
  }
}
