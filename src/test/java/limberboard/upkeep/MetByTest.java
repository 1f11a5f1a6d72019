package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.library.value.Phase;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that other due work does as well is counted once. */
class MetByTest {
  private static final LocalDate ON = LocalDate.of(2026, 2, 1);

  @TempDir Path folder;
  private TestWorkspace files;

  @BeforeEach
  void aBoat() throws IOException {
    files = new TestWorkspace(folder);
    files.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\nlaunched: 2014-06-01\n"
            + "season: {from: --04-15, to: --10-15}\n");
    files.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note\n2025-03-01,part,,\n2022-04-01,whole,,\n");
    part("");
    whole("must", "phase: ashore-mast-down", "");
  }

  private void page(String id, String minutes, String keys) {
    files.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: The "
            + id
            + "\nsystem: deck\nwork: service\nskill: owner\nminutes: "
            + minutes
            + "\n"
            + keys
            + "---\n1. Do it.\n");
  }

  private void part(String keys) {
    page(
        "part",
        "40",
        "interval: {every: P1Y, phase: ashore-mast-down, left-undone: costs, need: must}\n" + keys);
  }

  private void whole(String need, String phase, String keys) {
    page(
        "whole",
        "90",
        "interval: {every: P4Y, "
            + phase
            + ", left-undone: costs, need: "
            + need
            + "}\nresets: [part]\n"
            + keys);
  }

  private Upkeep upkeep() {
    try {
      Workspace read = new WorkspaceReader(files.folders()).read();
      assertThat(read.problems()).isEmpty();
      return Upkeep.of(read.library(), new Fitting(read.boat("knot").orElseThrow(), ON));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<String> doer(Upkeep upkeep) {
    Due part = upkeep.all().stream().filter(due -> due.id().equals("part")).findFirst().get();
    return upkeep.doneBy(part).map(Due::id);
  }

  @Test
  void ofBothOnlyTheWholeIsCounted() {
    Upkeep upkeep = upkeep();
    assertThat(upkeep.all()).extracting(Due::id).contains("part", "whole");
    assertThat(doer(upkeep)).contains("whole");
    List<Due> both =
        upkeep.all().stream().filter(due -> Set.of("part", "whole").contains(due.id())).toList();
    assertThat(upkeep.sum(both)).isEqualTo(new DueSum(1, 90));
    assertThat(upkeep.sum(both).words())
        .isEqualTo("1 piece of work, 1 h 30 min practised, 2 h 15 min the first time");
  }

  @Test
  void theSeasonHasTheWholeAndSaysOfThePartThatItIsDoneWithIt() {
    SeasonWork season = upkeep().season(2026);
    assertThat(season.planned()).extracting(Planned::id).contains("whole").doesNotContain("part");
    assertThat(season.others(Set.of(Phase.ASHORE_MAST_DOWN)))
        .filteredOn(task -> task.work().id().equals("part"))
        .extracting(task -> task.why().said())
        .containsExactly("done with “The whole”; by itself 1 year since 2025-03-01");
  }

  @Test
  void inTwelveYearsThePartComesInNineOfThem() {
    YearOfWork year = YearOfWork.of(upkeep(), 12);
    assertThat(year.lines())
        .filteredOn(line -> line.work().id().equals("part"))
        .extracting(YearOfWork.Line::times)
        .containsExactly(9 / 12.0);
    assertThat(year.lines())
        .filteredOn(line -> line.work().id().equals("whole"))
        .extracting(YearOfWork.Line::times)
        .containsExactly(3 / 12.0);
  }

  @Test
  void byItselfStandsWhatTheOtherDoesTooLate() {
    whole("must", "phase: afloat", "");
    files.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note\n2025-03-01,part,,\n2022-07-01,whole,,\n");
    assertThat(doer(upkeep())).isEmpty();
    assertThat(upkeep().season(2026).planned()).extracting(Planned::id).contains("part", "whole");
  }

  @Test
  void byItselfStandsWhatIsNeededMoreOrComesFirst() {
    whole("should", "phase: ashore-mast-down", "");
    assertThat(doer(upkeep())).isEmpty();
    whole("must", "phase: ashore-mast-down", "");
    part("before: [whole]\n");
    assertThat(doer(upkeep())).isEmpty();
  }

  @Test
  void inOneWinterTheWholeMayComeAfterThePartRanOutUnlessThatRunsOutUnused() {
    assertThat(doer(upkeep())).contains("whole");
    page(
        "part",
        "40",
        "interval: {every: P1Y, phase: ashore-mast-down, expires: true, left-undone: costs,"
            + " need: must}\n");
    assertThat(doer(upkeep())).isEmpty();
  }

  @Test
  void byItselfStandsWhatTheOtherDoesInAnotherSeason() {
    files.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note\n2025-03-01,part,,\n2024-04-01,whole,,\n");
    assertThat(doer(upkeep())).isEmpty();
    assertThat(upkeep().season(2026).planned()).extracting(Planned::id).contains("part");
  }

  @Test
  void whatResetsEachOtherIsCountedOnce() {
    part("resets: [whole]\n");
    page(
        "whole",
        "90",
        "interval: {every: P1Y, phase: ashore-mast-down, left-undone: costs, need: must}\n"
            + "resets: [part]\n");
    Upkeep upkeep = upkeep();
    List<Due> both =
        upkeep.all().stream().filter(due -> Set.of("part", "whole").contains(due.id())).toList();
    assertThat(upkeep.sum(both).works()).isEqualTo(1);
    assertThat(upkeep.season(2026).planned())
        .filteredOn(each -> Set.of("part", "whole").contains(each.id()))
        .hasSize(1);
  }
}
