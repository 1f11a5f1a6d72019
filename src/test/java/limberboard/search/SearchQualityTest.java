package limberboard.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.NotEntered;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How well the repository's own pages are found in everyday words. */
@ContentTest
class SearchQualityTest {
  private static final Path PHRASES = Path.of("src/test/resources/limberboard/search/phrases.csv");
  private static final double LEAST_FIRST = 0.80;
  private static final double LEAST_FIRST_THREE = 0.95;

  @TempDir static Path folder;
  private static Library library;
  private static SearchIndex index;

  @BeforeAll
  static void indexTheRepositorysPages() throws IOException {
    copy(Path.of("articles"), folder.resolve("articles"));
    copy(Path.of("index/words"), folder.resolve("index/words"));
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    library = new LibraryReader(folders).read();
    index = SearchIndex.open(folders);
    index.update(library);
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      files.forEach(
          file -> {
            Path target = to.resolve(from.relativize(file).toString());
            try {
              Files.createDirectories(target.getParent());
              if (Files.isRegularFile(file)) {
                Files.copy(file, target);
              }
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    }
  }

  @AfterAll
  static void close() throws IOException {
    index.close();
  }

  @Test
  void theRightSymptomIsNearlyAlwaysAmongTheFirst() throws IOException {
    SearchQuality quality = SearchQuality.measure(index, SearchQuality.read(PHRASES));
    assertThat(quality.outcomes()).hasSize(72);
    assertThat(quality.firstShare()).as(quality.text()).isGreaterThanOrEqualTo(LEAST_FIRST);
    assertThat(quality.firstThreeShare())
        .as(quality.text())
        .isGreaterThanOrEqualTo(LEAST_FIRST_THREE);
  }

  @ParameterizedTest
  @CsvSource({
    "wet berth cushions, 1, water-in-forward-cabin",
    "hydrolic oil leek, 1, oil-in-keel-compartment",
    "'hi, after the weekend there is water under the front bed and the cushions are soaked', 1,"
        + " water-in-forward-cabin",
  })
  void promisedPhrasesFindTheirSymptom(String text, int rank, String symptom) throws IOException {
    List<String> ids = SmallSearchWorkspace.ids(index, text);
    assertThat(ids.subList(0, Math.min(rank, ids.size()))).contains(symptom);
  }

  @ParameterizedTest
  @CsvSource({
    "hydrolic oil leek, oil-in-keel-compartment",
    "hydraulic fluid leaking, oil-in-keel-compartment",
    "leeking hydrolic hose, oil-in-keel-compartment",
    "sealant leaking, water-in-forward-cabin",
    "batery flat, battery-goes-flat",
    "disel overheats, diesel-overheats",
    "outbord wont start, outboard-will-not-start",
    "cluch slipping, clutch-slips",
    "stering slack, play-in-steering",
    "jib furler jam, furler-jams",
    "mast light ded, masthead-light-dead",
    "rust stain stanchion, rust-under-deck-fitting",
    "keel sinks, keel-will-not-stay-up",
  })
  void aFewWordsThatTellOfAFaultFindASymptomFirst(String text, String symptom) throws IOException {
    assertThat(SmallSearchWorkspace.ids(index, text)).startsWith(symptom);
  }

  @ParameterizedTest
  @CsvSource({
    "hydraulic oil, hydraulic-oil-vg46",
    "hydrolic oil, hydraulic-oil-vg46",
    "penetrating oil, penetrating-oil",
    "impeler, impeller",
    "polyuretane sealant, polyurethane-sealant",
    "waterproof grease, waterproof-grease",
    "gas leak fluid, gas-leak-fluid",
    "dry cells, dry-cells",
    "replace a blown fuse, replace-blown-fuse",
    "dry a flooded outboard, dry-flooded-outboard",
    "free a jammed centreboard, free-centreboard",
    "replace a corroded fastener, replace-corroded-fastener",
    "bleed keel hydralics, bleed-keel-hydraulics",
    "smell of gas, smell-of-gas",
    "gas check, gas-system-check",
    "galvanic corrosion, galvanic-corrosion",
    "batteries on board, batteries-on-board",
    "salt or fresh, salt-or-fresh",
  })
  void aBareNameFindsWhatItNamesFirst(String text, String page) throws IOException {
    assertThat(SmallSearchWorkspace.ids(index, text)).startsWith(page);
  }

  @Test
  void aFaultThatTheBoatCannotHaveIsSaidToBeSoBeforeAMaterialIsOffered() throws IOException {
    Boat finKeel = NotEntered.of("a tarnwick-30 of 2014", library).orElseThrow();
    SearchQuery query =
        SearchQuery.of("hydrolic oil leek")
            .forBoat(Optional.of(new Fitting(finKeel, LocalDate.of(2026, 5, 1))));
    Hit first = index.find(query).hits().get(0);
    assertThat(first.id()).isEqualTo("oil-in-keel-compartment");
    assertThat(first.fit().fits()).isFalse();
    assertThat(first.fit().reason()).isEqualTo("has no keel lifting");
  }

  @Test
  void aTitleFindsItsPageFirst() throws IOException {
    for (Page<?> page : library.pages()) {
      List<Hit> hits = index.find(SearchQuery.of(page.title())).hits();
      if (page.kind() == Kind.WORDING) {
        assertThat(hits).extracting(Hit::title).doesNotContain(page.title());
        continue;
      }
      assertThat(hits).as(page.title()).isNotEmpty();
      assertThat(hits.get(0).title()).isEqualTo(page.title());
    }
  }

  @Test
  void theWordsFilesAreInOrder() {
    assertThat(SearchWords.read(new WorkspaceFolders(folder)).problems()).isEmpty();
  }

  @Test
  void noPhraseStandsInAPage() throws IOException {
    for (SearchQuality.Phrase phrase : SearchQuality.read(PHRASES)) {
      for (Page<?> page : library.pages()) {
        assertThat(page.head().saidAs()).doesNotContain(phrase.text());
        assertThat(page.body()).doesNotContain(phrase.text());
      }
    }
  }

  @Test
  void sharesAreCountedByVoiceAndHalf(@TempDir Path temporary) throws IOException {
    Path file = temporary.resolve("phrases.csv");
    Files.writeString(
        file,
        "voice,phrase,symptom\na,wet berth cushions,water-in-forward-cabin\n"
            + "b,\"zzz, qqq\",water-in-main-bilge\na,wet berth cushions,battery-goes-flat\n");
    SearchQuality quality = SearchQuality.measure(index, SearchQuality.read(file));
    assertThat(quality.firstShare()).isEqualTo(1 / 3.0);
    assertThat(quality.of(phrase -> phrase.voice().equals("b")).firstThreeShare()).isZero();
    assertThat(quality.of(phrase -> phrase.number() % 2 == 1).firstShare()).isEqualTo(0.5);
    assertThat(quality.of(phrase -> false).firstShare()).isZero();
    assertThat(quality.text().lines())
        .contains(
            "a                         2    50 %         50 %",
            "odd lines                 2    50 %         50 %",
            "all                       3    33 %         33 %",
            "2 (b) zzz, qqq",
            "    meant water-in-main-bilge, found nowhere: ");
  }

  @Test
  void aFileOfSomethingElseIsRefused(@TempDir Path temporary) throws IOException {
    Path file = Files.writeString(temporary.resolve("other.csv"), "a,b\n1,2\n");
    assertThatIOException()
        .isThrownBy(() -> SearchQuality.read(file))
        .withMessageContaining("voice,phrase,symptom");
  }
}
