package limberboard.upkeep.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Model.Access;
import limberboard.library.problem.Problem;
import limberboard.library.value.Phase;
import limberboard.upkeep.Task;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lists of a boat with a few pages. */
class WorkListMakerTest {
  private static final String MODEL =
      """
      ---
      title: Smack
      built: 2000/..
      drawing: {profile: ../pictures/side.svg, deck: ../pictures/top.svg}
      zones:
        - {id: bow, title: Bow, deck: "0,0 1,0 1,1"}
        - {id: cabin, title: Cabin, deck: "0,0 1,0 1,1"}
        - {id: stern, title: Stern, deck: "0,0 1,0 1,1"}
      equipment: [{id: rig, title: Rig, choices: [{id: sloop, title: Sloop, default: 2000/..}]}]
      access:
        - {id: ashore, title: Hauled out, minutes: 100, open-in: [ashore-mast-down, ashore-mast-up]}
        - {id: boards, title: Boards lifted, minutes: 3}
        - {id: lid, title: Lid off, minutes: 8, needs: [boards]}
      ---
      """;

  @TempDir Path folder;
  private TestWorkspace files;

  @BeforeEach
  void makeWorkspace() {
    files = new TestWorkspace(folder);
    files.write("articles/models/smack.md", MODEL);
    files.write("boats/ruff/boat.yaml", "name: Ruff\nmodel: smack\nhull: 1\nbuilt: 2010\n");
  }

  private void page(String id, String more) {
    files.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: Do "
            + id
            + "\nsystem: deck\nwork: service\nskill: owner\nminutes: 10\n"
            + more
            + "\n---\n1. Do it.\n");
  }

  private Workspace workspace() throws java.io.IOException {
    return new WorkspaceReader(files.folders()).read();
  }

  private WorkList list(ListKind kind, String... pages) throws java.io.IOException {
    Workspace read = workspace();
    Fitting fitting = new Fitting(read.boat("ruff").orElseThrow(), LocalDate.of(2026, 3, 1));
    List<Task> tasks =
        Arrays.stream(pages)
            .map(id -> read.library().procedure(id).orElseThrow())
            .map(page -> new Task(page, Works.phase(page), Works.reason(page), Optional.empty()))
            .toList();
    return new WorkListMaker(fitting).list(kind, tasks);
  }

  private static List<String> ids(ListPart part) {
    return part.lines().stream().map(line -> line.work().id()).toList();
  }

  @Test
  void nestedAccessIsOpenedOnceOutsideInAndClosedInsideOut() throws java.io.IOException {
    page("a", "zones: [cabin]\naccess: [lid]\ninterval: {every: P1Y, phase: afloat}");
    page("b", "zones: [stern]\ninterval: {every: P1Y, phase: afloat}");
    page("c", "zones: [cabin]\naccess: [boards]\ninterval: {every: P1Y, phase: afloat}");
    ListPart part = list(ListKind.FITTING_OUT, "b", "c", "a").parts().get(0);
    assertThat(ids(part)).containsExactly("c", "a", "b");
    assertThat(part.lines().get(0).open()).extracting(Access::id).containsExactly("boards");
    assertThat(part.lines().get(0).close()).isEmpty();
    assertThat(part.lines().get(1).open()).extracting(Access::id).containsExactly("lid");
    assertThat(part.lines().get(1).close()).extracting(Access::id).containsExactly("lid", "boards");
    assertThat(part.accessMinutes()).isEqualTo(11);
    assertThat(part.workMinutes()).isEqualTo(30);
    assertThat(part.lines()).extracting(ListLine::number).containsExactly(1, 2, 3);
  }

  @Test
  void whatStandsOpenAnywayCostsNothing() throws java.io.IOException {
    page("keel", "zones: [bow]\naccess: [ashore]\ninterval: {every: P1Y, phase: ashore-mast-up}");
    page("wash", "zones: [bow]\naccess: [ashore]\ninterval: {every: P1Y, phase: lay-up}");
    assertThat(list(ListKind.FITTING_OUT, "keel", "wash").parts())
        .singleElement()
        .satisfies(part -> assertThat(part.accessMinutes()).isZero());
    assertThat(list(ListKind.LAYING_UP, "keel", "wash").parts())
        .singleElement()
        .satisfies(
            part -> {
              assertThat(ids(part)).containsExactly("wash");
              assertThat(part.accessMinutes()).isEqualTo(100);
            });
  }

  @Test
  void workMovesToThePartOfWhatComesBeforeIt() throws java.io.IOException {
    page("look", "zones: [stern]\nbefore: [fill]\ninterval: {every: P1Y, phase: afloat}");
    page("fill", "zones: [bow]\nbefore: [sail]\ninterval: {every: P1Y, phase: ashore-mast-up}");
    page("sail", "zones: [bow]\ninterval: {every: P1Y, phase: ashore-mast-down}");
    WorkList list = list(ListKind.FITTING_OUT, "fill", "look", "sail");
    assertThat(list.parts()).singleElement().extracting(ListPart::phase).isEqualTo(Phase.AFLOAT);
    assertThat(ids(list.parts().get(0))).containsExactly("look", "fill", "sail");
    assertThat(list.parts().get(0).lines().get(1).moved())
        .hasValue(new ListLine.Moved(Phase.ASHORE_MAST_UP, "Do look"));
    assertThat(list.problems()).isEmpty();
  }

  @Test
  void aMoveThatShutsAPlaceIsReportedWithThePages() throws java.io.IOException {
    page("look", "zones: [stern]\nbefore: [paint]\ninterval: {every: P1Y, phase: afloat}");
    page("paint", "zones: [bow]\naccess: [ashore]\ninterval: {every: P1Y, phase: ashore-mast-up}");
    WorkList list = list(ListKind.FITTING_OUT, "look", "paint");
    assertThat(ids(list.parts().get(0))).containsExactly("look", "paint");
    assertThat(list.problems())
        .singleElement()
        .extracting(Problem::toString)
        .asString()
        .contains("articles/procedures/paint.md", "Hauled out", "look", "afloat");
  }

  @Test
  void pagesInACircleAreNamedAndStillListed() throws java.io.IOException {
    page("a", "zones: [bow]\nbefore: [b]\ninterval: {every: P1Y, phase: afloat}");
    page("b", "zones: [bow]\nbefore: [a, b]\ninterval: {every: P1Y, phase: afloat}");
    page("z", "zones: [bow]\nbefore: [a]\ninterval: {every: P1Y, phase: afloat}");
    WorkList list = list(ListKind.FITTING_OUT, "a", "b", "z");
    assertThat(ids(list.parts().get(0))).containsExactlyInAnyOrder("a", "b", "z");
    assertThat(ids(list.parts().get(0)).indexOf("z"))
        .isLessThan(ids(list.parts().get(0)).indexOf("a"));
    assertThat(list.problems())
        .extracting(Problem::toString)
        .anyMatch(problem -> problem.contains("a before b before a"))
        .anyMatch(problem -> problem.contains("b.md: before: comes before itself"))
        .hasSize(2);
  }

  @Test
  void workGivenTwiceStandsOnce() throws java.io.IOException {
    page("a", "zones: [bow]\ninterval: {every: P1Y, phase: afloat}");
    assertThat(list(ListKind.FITTING_OUT, "a", "a").lines()).hasSize(1);
  }

  @Test
  void workWithoutAPhaseGoesEarlierWhenSomethingWaitsForIt() throws java.io.IOException {
    page("a", "zones: [bow]\nbefore: [b]\ninterval: {every: P1Y}");
    page("b", "zones: [bow]\ninterval: {every: P1Y, phase: ashore-mast-down}");
    ListPart part = list(ListKind.FITTING_OUT, "b", "a").parts().get(0);
    assertThat(part.phase()).isEqualTo(Phase.ASHORE_MAST_DOWN);
    assertThat(ids(part)).containsExactly("a", "b");
    assertThat(part.lines()).allMatch(line -> line.moved().isEmpty());
  }

  @Test
  void workInAPlaceThatTheBoatLacksIsListedWithoutOne() throws java.io.IOException {
    page("a", "zones: [keel]\ninterval: {every: P1Y, phase: afloat}");
    assertThat(list(ListKind.FITTING_OUT, "a").lines())
        .singleElement()
        .satisfies(line -> assertThat(line.zone()).isEmpty());
  }
}
