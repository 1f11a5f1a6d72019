package limberboard.upkeep.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.AccessWays;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.upkeep.Task;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** All lists of all boats of the demo: what must be kept is kept. */
@ContentTest
class RealListsTest {

  /** A list and how its work was chosen. */
  private record Made(String name, WorkList list, List<Task> given) {}

  private static List<Made> all() throws IOException {
    Workspace workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
    List<Made> lists = new ArrayList<>();
    for (Boat boat : workspace.boats()) {
      Fitting fitting = new Fitting(boat, LocalDate.of(2026, 3, 15));
      for (ListKind kind : ListKind.values()) {
        String name = boat.id() + " " + kind.word();
        WorkListMaker maker = new WorkListMaker(fitting);
        List<Task> every = Works.everything(workspace.library(), fitting, kind);
        lists.add(new Made(name, maker.list(kind, every), every));
        List<Task> mends = Works.withMends(workspace.library(), fitting, kind);
        lists.add(new Made(name + " with mends", maker.list(kind, mends), mends));
      }
    }
    return lists;
  }

  @TestFactory
  Stream<DynamicTest> keepWhatMustBeKept() throws IOException {
    return all().stream()
        .map(
            made ->
                DynamicTest.dynamicTest(
                    made.name(),
                    () -> {
                      assertThat(made.list().problems()).isEmpty();
                      assertThat(
                              made.list()
                                  .lines()
                                  .flatMap(line -> line.task().pages().stream())
                                  .map(Page::id))
                          .containsExactlyInAnyOrderElementsOf(
                              made.given().stream()
                                  .map(task -> task.work().id())
                                  .distinct()
                                  .toList());
                      everyOrderHolds(made.list());
                      made.list().parts().forEach(part -> accessIsOpenedOnce(part, made.list()));
                    }));
  }

  private static void everyOrderHolds(WorkList list) {
    List<String> ids = list.lines().map(line -> line.work().id()).toList();
    list.lines()
        .forEach(
            line ->
                line.work().details().before().stream()
                    .filter(ids::contains)
                    .forEach(
                        later ->
                            assertThat(ids.indexOf(line.work().id()))
                                .as(line.work().id() + " before " + later)
                                .isLessThan(ids.indexOf(later))));
  }

  private static void accessIsOpenedOnce(ListPart part, WorkList list) {
    AccessWays ways = new AccessWays(list.fitting());
    Set<String> open = new HashSet<>();
    list.fitting().boat().model().details().access().stream()
        .filter(access -> access.openIn().contains(part.phase()))
        .forEach(access -> open.add(access.id()));
    Set<String> opened = new HashSet<>();
    for (ListLine line : part.lines()) {
      for (Access access : line.open()) {
        assertThat(opened.add(access.id())).as("opened twice: " + access.id()).isTrue();
        assertThat(ways.toOpen(access.needs(), open)).as(access.id() + " needs").isEmpty();
        open.add(access.id());
      }
      assertThat(ways.toOpen(line.task().access(), open))
          .as("still shut at " + line.work().id())
          .isEmpty();
      line.close().forEach(access -> assertThat(open.remove(access.id())).isTrue());
    }
    assertThat(opened).allMatch(access -> !open.contains(access));
  }
}
