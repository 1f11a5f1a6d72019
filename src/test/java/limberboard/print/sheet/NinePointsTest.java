package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.print.cut.PageCutter;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.page.CutPage;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import limberboard.upkeep.Upkeep;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * That no letter on paper is below nine points: the page of every work on the first boat that has
 * it, every symptom's page and tree, whole and cut, and every boat's sheet of what is due. What is
 * drawn, such as a card, is held where it is drawn.
 */
@ContentTest
class NinePointsTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);

  /** Ways met less often make a tree longer, not other than it is. */
  private static final double RAREST = 0.02;

  private static WorkspaceFolders folders;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
  }

  private static Optional<Fitting> first(Page<?> page) {
    return fittings().filter(fitting -> fitting.fits(page.head().fits())).findFirst();
  }

  private static Stream<Fitting> fittings() {
    return workspace.boats().stream().map(boat -> new Fitting(boat, ON));
  }

  /** Holds a sheet, and says how many sheets of paper it takes. */
  private static int holds(CutPage sheet, String what) throws IOException {
    PrintedSheets printed = new PrintedSheets(sheet, folders);
    assertThat(printed.small()).as(what).isEmpty();
    List<String> pages = printed.pages(UnaryOperator.identity());
    assertThat(String.join(" ", pages)).as(what).contains("Page 1 of " + pages.size());
    return pages.size();
  }

  @Test
  void thePageOfEveryWork() throws IOException {
    PageCutter cutter = new PageCutter(workspace.library());
    int held = 0;
    for (Page<Procedure> page : workspace.library().all(Procedure.class)) {
      Optional<Fitting> boat = first(page);
      if (boat.isPresent()) {
        holds(cutter.cut(page, boat), page.id());
        held++;
      }
    }
    assertThat(held).isGreaterThan(workspace.library().all(Procedure.class).size() * 3 / 4);
  }

  @Test
  void thePageAndTheTreeOfEverySymptomWholeAndCut() throws IOException {
    PageCutter cutter = new PageCutter(workspace.library());
    int held = 0;
    for (Page<Symptom> page : workspace.library().all(Symptom.class)) {
      Fitting boat = first(page).orElseThrow();
      holds(cutter.cut(page, Optional.of(boat)), page.id());
      Fault fault = Fault.of(page, boat, workspace.library(), workspace.cases());
      DiagnosticTree tree = DiagnosticTree.of(Trace.begin(fault), RAREST);
      int whole = holds(new TreeSheet().of(tree), "tree of " + page.id());
      TreeCut cut = TreeCut.levels(tree, 2);
      assertThat(holds(new TreeSheet().of(cut), "cut tree of " + page.id()))
          .isLessThanOrEqualTo(whole);
      held++;
    }
    assertThat(held).isEqualTo(workspace.library().all(Symptom.class).size());
  }

  @Test
  void whatIsDueOnEveryBoat() throws IOException {
    for (Fitting fitting : fittings().toList()) {
      Upkeep upkeep = Upkeep.of(workspace.library(), fitting);
      holds(DueSheet.of(upkeep, List.of(), 3), fitting.boat().id());
    }
    assertThat(fittings()).hasSizeGreaterThan(3);
  }
}
