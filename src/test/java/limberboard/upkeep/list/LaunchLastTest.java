package limberboard.upkeep.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Phase;
import limberboard.upkeep.Upkeep;
import org.junit.jupiter.api.Test;

/** The order of the real lists where it matters most (common practice, no source). */
@ContentTest
class LaunchLastTest {
  private static final Set<String> STEPPING =
      Set.of("step-mast-tarnwick-21", "step-mast-tarnwick-26", "step-mast-by-crane");

  @Test
  void nothingIsLeftToDoAshoreAfterTheLaunchChecksNorAtTheMastAfterStepping() throws IOException {
    Workspace demo = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    assertThat(demo.boats()).isNotEmpty();
    for (Boat boat : demo.boats()) {
      Fitting fitting = new Fitting(boat, LocalDate.of(2026, 3, 15));
      ListWork work = new ListWork(Upkeep.of(demo.library(), fitting));
      WorkList list =
          new WorkListMaker(fitting)
              .list(ListKind.FITTING_OUT, work.everything(ListKind.FITTING_OUT, 2026));
      List<String> ashore = ids(list, Phase.ASHORE_MAST_UP);
      assertThat(ashore.get(ashore.size() - 1)).as(boat.id()).isEqualTo("launch-checks");
      List<String> down = ids(list, Phase.ASHORE_MAST_DOWN);
      int stepping =
          down.indexOf(down.stream().filter(STEPPING::contains).findFirst().orElseThrow());
      assertThat(down.indexOf("replace-deck-plug")).as(boat.id()).isLessThan(stepping);
    }
  }

  private static List<String> ids(WorkList list, Phase phase) {
    return list.parts().stream()
        .filter(part -> part.phase() == phase)
        .flatMap(part -> part.lines().stream())
        .map(line -> line.work().id())
        .toList();
  }
}
