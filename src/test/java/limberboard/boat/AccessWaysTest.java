package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Model.Access;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AccessWaysTest {
  @TempDir Path folder;
  private AccessWays ways;

  @BeforeEach
  void readBoat() throws IOException {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    Boat boat = new WorkspaceReader(workspace.folders()).read().boat("knot").orElseThrow();
    ways = new AccessWays(new Fitting(boat, LocalDate.of(2026, 4, 1)));
  }

  @Test
  void whatIsNeededComesFirstAndIsPaidOnce() {
    assertThat(ways.toOpen(List.of("panel-off", "berth-lifted"), Set.of()))
        .extracting(Access::id)
        .containsExactly("berth-lifted", "panel-off");
    assertThat(ways.minutes(List.of("panel-off", "berth-lifted"), Set.of())).isEqualTo(15);
  }

  @Test
  void whatIsOpenCostsNothing() {
    assertThat(ways.minutes(List.of("panel-off"), Set.of("berth-lifted"))).isEqualTo(10);
    assertThat(ways.minutes(List.of("panel-off"), Set.of("berth-lifted", "panel-off"))).isZero();
  }

  @Test
  void whatTheModelDoesNotKnowIsNotNeeded() {
    assertThat(ways.minutes(List.of("headlining-down"), Set.of())).isZero();
  }
}
