package limberboard.letters.next;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.cases.NextPages.Hint;
import limberboard.cases.NextPages.Kind;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.MissedSearch;
import limberboard.search.MissedSearch.How;
import limberboard.search.TextWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Letters and searches that no page serves are put together and ranked. */
class NextListTest {
  private static final WorkspaceFolders DEMO = new WorkspaceFolders(Path.of(""));
  private static final Workspace WORKSPACE = read();
  private static final LocalDate DAY = LocalDate.of(2026, 5, 20);
  private static final List<NamedText> LETTERS =
      List.of(
          letter("fridge-1.eml", "Fridge\n\nHello, the fridge hums and stays warm. Ada Lind"),
          letter("oven.eml", "Oven\n\nHello, the oven door does not shut. Ada Lind"),
          letter("fridge-2.eml", "Milk on Dunlin\n\nHello, our fridge is warm. Ada Lind"),
          letter("fridge-3.eml", "Warm milk\n\nHello, the fridges compressor hums. Ben Oake"));
  private static final List<String> OTHERS =
      List.of(
          "Berth\n\nHello, the berth on Dunlin is wet. Ada Lind",
          "Rain\n\nHello, rain comes through the hatch. Ada Lind",
          "Keel\n\nHello, the keel sinks overnight. Ben Oake");

  @TempDir private Path folder;

  private static Workspace read() {
    try {
      return new WorkspaceReader(DEMO).read();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static NamedText letter(String name, String text) {
    return new NamedText(name, text);
  }

  private static List<Hint> hints(List<NamedText> letters, List<MissedSearch> searches) {
    return new NextList(WORKSPACE, TextWords.read(DEMO, List.of())).of(letters, OTHERS, searches);
  }

  private static List<Hint> hints(Kind kind) {
    List<MissedSearch> searches =
        List.of(
            new MissedSearch(DAY, How.NOTHING, "bow thruster"),
            new MissedSearch(DAY, How.NOT_OPENED, "radar"),
            new MissedSearch(DAY.plusDays(1), How.NOT_OPENED, "the bow thrusters"));
    return hints(LETTERS, searches).stream().filter(hint -> hint.kind() == kind).toList();
  }

  @Test
  void aSearchIsNoLongerListedOnceAPageSaysItsWords() {
    assertThat(
            hints(
                List.of(),
                List.of(
                    new MissedSearch(DAY, How.NOTHING, "the chain jumps off"),
                    new MissedSearch(DAY, How.NOTHING, "the chain is pink"))))
        .filteredOn(hint -> hint.kind() == Kind.SEARCHES)
        .singleElement()
        .satisfies(hint -> assertThat(hint.todo()).contains("the chain is pink"));
  }

  @Test
  void lettersThatShareTellingWordsStandTogether() {
    List<Hint> letters = hints(Kind.LETTERS);
    assertThat(letters).hasSize(2);
    assertThat(letters.get(0).examples())
        .containsExactlyInAnyOrder("fridge-1.eml", "fridge-2.eml", "fridge-3.eml");
    assertThat(letters.get(0).evidence())
        .startsWith("3 letters tell of a fault that no page covers")
        .contains("“fridge")
        .doesNotContain("Ada")
        .doesNotContain("hello")
        .doesNotContain("dunlin");
    assertThat(letters.get(1).examples()).containsExactly("oven.eml");
    assertThat(letters.get(1).isNew()).isTrue();
  }

  @Test
  void searchesForTheSameAreCountedTogether() {
    List<Hint> searches = hints(Kind.SEARCHES);
    assertThat(searches).hasSize(2);
    assertThat(searches.get(0).words()).containsExactly("bow thruster", "the bow thrusters");
    assertThat(searches.get(0).evidence()).contains("nothing 1 time", "opened 1 time", "21 May");
    assertThat(searches.get(0).weight()).isEqualTo(1);
  }

  @Test
  void everythingIsRankedInOneList() {
    List<Hint> all = hints(LETTERS, List.of());
    assertThat(all).extracting(Hint::kind).contains(Kind.LETTERS, Kind.MINUTES_OFF);
    assertThat(all)
        .extracting(Hint::weight)
        .isSortedAccordingTo((one, other) -> Double.compare(other, one));
    assertThat(hints(List.of(), List.of())).extracting(Hint::kind).doesNotContain(Kind.LETTERS);
  }

  @Test
  void aPageIsBegunOnceAndNothingInALetterEndsItsText() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    Files.createDirectories(folders.articles().resolve("symptoms"));
    String subject = "It's \"bad\": #1 \\ ---\u2028x: y";
    Hint hint = hints(List.of(letter("a.eml", subject + "\n\nodd")), List.of()).get(0);
    Hint own =
        hints(List.of(letter("a.eml", subject + "\n\nodd")), List.of()).stream()
            .filter(Hint::isNew)
            .findFirst()
            .orElse(hint);
    Path page = NewPage.write(folders, own);
    assertThat(page).hasParent(folders.articles().resolve("symptoms"));
    String text = Files.readString(page);
    JsonNode header = new YAMLMapper().readTree(text.substring(4, text.lastIndexOf("---")));
    assertThat(header.get("said-as").get(0).asText())
        .isEqualTo(own.words().get(0).replace('\u2028', ' '));
    assertThat(header.has("x")).isFalse();
    assertThatThrownBy(() -> NewPage.write(folders, own)).hasMessageContaining("there already");
    assertThat(page).hasContent(text);
  }
}
