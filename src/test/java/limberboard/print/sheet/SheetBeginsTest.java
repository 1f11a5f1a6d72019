package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.PdfLetters;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.rigging.RunningRigging;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkListMaker;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingList;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Where a list begins on paper, for every boat, and how large its letters are. */
class SheetBeginsTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);
  private static final double QUARTER_OF_A4_PT = 297 / 4.0 / 25.4 * 72;
  private static final double SMALLEST_PT = 9 - 0.05;

  private static Workspace workspace;
  private static Pdf pdf;

  @BeforeAll
  static void read() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
    pdf = new Pdf(Pictures.in(folders));
  }

  @TestFactory
  Stream<DynamicTest> aListBeginsInTheFirstQuarterOfItsFirstSheetInLettersThatCanBeRead() {
    return workspace.boats().stream()
        .map(boat -> new Fitting(boat, ON))
        .flatMap(boat -> sheets(boat).stream())
        .map(sheet -> DynamicTest.dynamicTest(sheet.title() + sheet.cutFor(), () -> begins(sheet)));
  }

  private static List<CutPage> sheets(Fitting boat) {
    Upkeep upkeep = Upkeep.of(workspace.library(), boat);
    ShoppingList shopping =
        ShoppingList.of(
            SeasonJobs.of(upkeep, Optional.of(2026)),
            boat,
            workspace.stock(boat.boat()),
            workspace.library());
    return List.of(
        list(upkeep, ListKind.FITTING_OUT),
        list(upkeep, ListKind.LAYING_UP),
        new ShoppingSheet(workspace.library()).onPaper(shopping),
        new RiggingSheet(workspace.library()).of(RunningRigging.of(workspace.library(), boat)));
  }

  private static CutPage list(Upkeep upkeep, ListKind kind) {
    ListWork work = new ListWork(upkeep);
    return new WorkListSheet(workspace.library())
        .onPaper(new WorkListMaker(upkeep.fitting()).list(kind, work.due(kind, work.season(kind))));
  }

  private static void begins(CutPage sheet) throws IOException {
    PdfLetters letters = PdfLetters.of(pdf.of(sheet));
    for (String first : first(sheet).stream().toList()) {
      assertThat(letters.where(first))
          .hasValueSatisfying(
              letter -> {
                assertThat(letter.sheet()).isEqualTo(1);
                assertThat(letter.y()).isBetween(0.0, QUARTER_OF_A4_PT);
              });
    }
    assertThat(letters.all()).filteredOn(letter -> letter.size() < SMALLEST_PT).isEmpty();
  }

  /** The title over what the list is for: its first part of work, of what to get, of ropes. */
  private static Optional<String> first(CutPage sheet) {
    return sheet.parts().stream()
        .filter(
            part ->
                List.of(Part.Role.WORK, Part.Role.MATERIALS, Part.Role.ROPES).contains(part.role()))
        .findFirst()
        .map(Part::title);
  }
}
