package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.print.text.InlineText;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Where the first step of every procedure stands on paper, for every boat and for none. A round
 * carries the cautions of all the work within it, and its first step may stand a little lower.
 */
class FirstStepTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);
  private static final double HALF_AN_A4_SHEET_PT = 297 / 2.0 / 25.4 * 72;
  private static final double OF_A_ROUND = 1.15;
  private static final int LETTERS = 10;

  private static WorkspaceFolders folders;
  private static Workspace workspace;
  private static PageCutter cutter;
  private static Pdf pdf;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
    cutter = new PageCutter(workspace.library());
    pdf = new Pdf(Pictures.in(folders));
  }

  @TestFactory
  Stream<DynamicTest> theFirstStepStandsInTheFirstHalfOfTheFirstSheet() {
    return workspace.library().all(Procedure.class).stream()
        .map(
            page ->
                DynamicTest.dynamicTest(
                    page.id(),
                    () -> {
                      for (CutPage cut : cuts(page)) {
                        Optional<Block.Items> steps = steps(cut);
                        if (steps.isPresent()) {
                          assertThat(y(upTo(cut, steps.get()), steps.get()))
                              .as("%s, %s", page.id(), cut.cutFor())
                              .isBetween(0.0, lowest(page));
                        } else {
                          assertThat(page.details().skill().word()).isEqualTo("licensed");
                        }
                      }
                    }));
  }

  private static double lowest(Page<Procedure> page) {
    return HALF_AN_A4_SHEET_PT * (page.details().isRound() ? OF_A_ROUND : 1);
  }

  private static List<CutPage> cuts(Page<Procedure> page) {
    List<CutPage> cuts = new ArrayList<>(List.of(cutter.cut(page, Optional.empty())));
    workspace.boats().stream()
        .map(boat -> new Fitting(boat, ON))
        .filter(boat -> boat.fits(page.head().fits()))
        .forEach(boat -> cuts.add(cutter.cut(page, Optional.of(boat))));
    return cuts;
  }

  private static Optional<Block.Items> steps(CutPage cut) {
    return cut.part(Part.Role.BODY).stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Items.class::isInstance)
        .map(Block.Items.class::cast)
        .filter(Block.Items::numbered)
        .findFirst();
  }

  /** The page to the end of its first steps: what comes after moves nothing that stands before. */
  private static CutPage upTo(CutPage cut, Block.Items steps) {
    List<Part> parts = new ArrayList<>();
    for (Part part : cut.parts()) {
      int at = part.blocks().indexOf(steps);
      if (at >= 0) {
        parts.add(new Part(part.role(), part.title(), part.blocks().subList(0, at + 1)));
        break;
      }
      parts.add(part);
    }
    return new CutPage(cut.id(), cut.kind(), cut.title(), cut.summary(), cut.cutFor(), parts);
  }

  /** How far below the sheet's upper edge the first step's first letters stand, in points. */
  private static double y(CutPage cut, Block.Items steps) throws IOException {
    Block first = steps.items().get(0).get(0);
    List<Inline> words =
        ((Block.Paragraph) first)
            .text().stream().filter(run -> !(run instanceof Inline.CautionName)).limit(1).toList();
    String dense = PdfLetters.dense(InlineText.of(words));
    return PdfLetters.of(pdf.of(cut))
        .where(
            dense.substring(0, Math.min(LETTERS, dense.length())),
            cut.part(Part.Role.BODY).orElseThrow().title())
        .filter(letter -> letter.sheet() == 1)
        .map(PdfLetters.Letter::y)
        .orElse(Double.MAX_VALUE);
  }
}
