package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import limberboard.ContentTest;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Symptom;
import limberboard.print.PdfLetters;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Where the steps of a printed tree begin, for every symptom of every boat: within about the first
 * quarter of its first sheet, and where it may be an emergency, which is told in full before
 * everything, about half way down. A line more for a caution is not saved to keep to it.
 */
@ContentTest
class TreeBeginsTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);
  private static final double A4_PT = 297 / 25.4 * 72;
  private static final double ABOUT_HALF = 0.56;
  private static final double ABOUT_A_QUARTER = 0.28;
  private static final String STEPS = "The steps";

  /** The beginning of a tree: ways met less often than this bring hardly a caution more. */
  private static final double RAREST = 0.05;

  private static Workspace workspace;
  private static Pdf pdf;

  @BeforeAll
  static void read() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
    pdf = new Pdf(Pictures.in(folders));
  }

  @TestFactory
  Stream<DynamicTest> aTreesStepsBeginAtTheTop() {
    return workspace.boats().stream()
        .map(boat -> new Fitting(boat, ON))
        .flatMap(
            boat ->
                workspace.library().all(Symptom.class).stream()
                    .filter(page -> boat.fits(page.head().fits()))
                    .map(page -> Fault.of(page, boat, workspace.library(), workspace.cases()))
                    .map(
                        fault ->
                            DynamicTest.dynamicTest(
                                fault.page().id() + " on " + boat.boat().id(),
                                () -> begins(fault))));
  }

  private static void begins(Fault fault) throws IOException {
    TreeCut cut = TreeCut.all(DiagnosticTree.of(Trace.begin(fault), RAREST));
    boolean emergency = cut.cautions().stream().anyMatch(WorkCaution::emergency);
    assertThat(PdfLetters.of(pdf.of(top(new TreeSheet().of(cut)))).where(STEPS))
        .as("%s on %s", fault.page().id(), fault.fitting().boat().id())
        .hasValueSatisfying(
            letter -> {
              assertThat(letter.sheet()).isEqualTo(1);
              assertThat(letter.y())
                  .as("%s on %s", fault.page().id(), fault.fitting().boat().id())
                  .isBetween(0.0, A4_PT * (emergency ? ABOUT_HALF : ABOUT_A_QUARTER));
            });
  }

  /** A sheet up to the first words of its steps; what follows does not move them. */
  private static CutPage top(CutPage sheet) {
    List<Part> parts = new ArrayList<>();
    for (Part part : sheet.parts()) {
      boolean steps = part.title().equals(STEPS);
      parts.add(steps ? new Part(part.role(), STEPS, part.blocks().subList(0, 1)) : part);
      if (steps) {
        break;
      }
    }
    return new CutPage(
        sheet.id(),
        sheet.kind(),
        sheet.label(),
        sheet.title(),
        sheet.summary(),
        sheet.cutFor(),
        parts);
  }
}
