package limberboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.LogEntry;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Caution;
import limberboard.library.page.CautionUse;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.Topic;
import limberboard.library.value.Work;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The repository's own workspace: whole, and as large as it claims. */
@ContentTest
class DemoWorkspaceTest {
  private static final List<String> PROMISED_SYMPTOMS =
      List.of(
          "water-in-forward-cabin",
          "water-in-main-bilge",
          "water-under-cockpit",
          "oil-in-keel-compartment",
          "keel-will-not-stay-up",
          "outboard-will-not-start",
          "diesel-overheats",
          "play-in-steering",
          "rust-under-deck-fitting",
          "masthead-light-dead",
          "battery-goes-flat",
          "clutch-slips");

  private static Workspace workspace;
  private static Library library;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    library = workspace.library();
  }

  @Test
  void hasNoProblems() {
    assertThat(workspace.problems()).isEmpty();
  }

  @Test
  void isAsLargeAsPromised() {
    assertThat(library.all(Model.class)).hasSize(4);
    assertThat(workspace.boats()).hasSize(6);
    assertThat(library.all(Procedure.class)).hasSizeGreaterThanOrEqualTo(60);
    assertThat(library.all(Material.class)).hasSizeGreaterThanOrEqualTo(40);
    assertThat(library.all(Caution.class)).hasSizeGreaterThanOrEqualTo(14);
    assertThat(library.all(Topic.class)).hasSizeGreaterThanOrEqualTo(6);
    List<Page<Symptom>> symptoms = library.all(Symptom.class);
    assertThat(symptoms).extracting(Page::id).containsAll(PROMISED_SYMPTOMS);
    assertThat(symptoms.stream().mapToInt(page -> page.details().causes().size()).sum())
        .isGreaterThanOrEqualTo(70);
    assertThat(symptoms.stream().mapToInt(page -> page.details().checks().size()).sum())
        .isGreaterThanOrEqualTo(70);
  }

  @Test
  void everyBoatHasALogOfAtLeastThreeSeasons() {
    for (Boat boat : workspace.boats()) {
      Set<Integer> seasons =
          boat.log().stream()
              .filter(entry -> entry.work().equals("launched"))
              .map(LogEntry::date)
              .map(LocalDate::getYear)
              .collect(Collectors.toSet());
      assertThat(seasons).as(boat.name()).hasSizeGreaterThanOrEqualTo(3);
    }
  }

  /** What is done as part of other work, whose page leads to it. */
  private static final Map<String, String> PART_OF =
      Map.of(
          "clear-limber-holes", "clean-and-dry-bilge",
          "check-furler-halyard-lead", "service-furler",
          "tighten-foil-joints", "service-furler",
          "inspect-spreaders", "inspect-standing-rigging");

  @Test
  void whatIsDoneAsPartOfOtherWorkIsLedToFromThere() {
    PART_OF.forEach(
        (part, whole) ->
            assertThat(library.procedure(whole).orElseThrow().body()).contains(part + ".md"));
  }

  @Test
  void whatIsDoneAgainAndAgainSaysHowOften() {
    assertThat(library.all(Procedure.class))
        .filteredOn(
            page -> page.details().work() == Work.INSPECT || page.details().work() == Work.SERVICE)
        .filteredOn(page -> !PART_OF.containsKey(page.id()))
        .allSatisfy(page -> assertThat(page.details().interval()).as(page.id()).isPresent());
  }

  /** The usual cautions of the trade; which work must carry which. Common practice, no source. */
  @Test
  void dangerousMaterialsBringTheirCautions() {
    Map<String, String> brings =
        Map.of(
            "polyurethane-sealant", "isocyanates",
            "acetone", "solvents",
            "epoxy-resin", "resins-and-hardeners",
            "petrol", "petrol-vapour");
    brings.forEach(
        (material, caution) ->
            assertThat(
                    CautionUse.ids(library.material(material).orElseThrow().details().cautions()))
                .as(material)
                .contains(caution));
  }

  @Test
  void gasIsForTheLicensed() {
    assertThat(library.all(Procedure.class))
        .filteredOn(page -> CautionUse.ids(page.details().cautions()).contains("gas-leak"))
        .isNotEmpty();
    assertThat(library.all(Procedure.class))
        .filteredOn(page -> page.head().system().map(s -> s.word().equals("gas")).orElse(false))
        .isNotEmpty()
        .allSatisfy(
            page -> {
              assertThat(page.details().skill().word()).as(page.id()).isEqualTo("licensed");
              assertThat(CautionUse.ids(page.details().cautions()))
                  .as(page.id())
                  .contains("gas-leak");
            });
  }
}
