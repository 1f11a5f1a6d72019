package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.print.PdfText;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Due;
import limberboard.upkeep.Due.Group;
import limberboard.upkeep.Upkeep;
import limberboard.words.DayWords;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DueSheetTest {
  private static WorkspaceFolders folders;
  private static Workspace workspace;
  private static Upkeep upkeep;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
    upkeep =
        Upkeep.of(
            workspace.library(),
            new Fitting(workspace.boat("dunlin").orElseThrow(), LocalDate.of(2026, 3, 15)));
  }

  @Test
  void itBeginsWithTheWarningToReadThePagesFirst() {
    CutPage sheet = DueSheet.of(upkeep, List.of(), 3);
    assertThat(sheet.parts().get(0).role()).isEqualTo(Part.Role.NOTICE);
    assertThat(new PlainText().render(sheet, 80)).contains("Read the page of each job first");
    assertThat(sheet.parts().get(sheet.parts().size() - 1).role())
        .isEqualTo(Part.Role.CAUTIONS_IN_FULL);
  }

  @Test
  void everythingThatIsDueStandsOnItWithItsReason() {
    String text = PdfText.flat(new PlainText().render(DueSheet.of(upkeep, List.of(), 3), 2000));
    for (Group group : List.of(Group.OVERDUE, Group.THIS_SEASON)) {
      assertThat(upkeep.of(group)).isNotEmpty();
      for (Due due : upkeep.of(group)) {
        assertThat(text).contains(due.title()).contains(PdfText.flat(due.why().said(DayWords::of)));
      }
    }
    assertThat(text).doesNotContainPattern("\\d{4}-\\d{2}-\\d{2}");
  }

  @Test
  void doubtsAreAskedWithFileAndLine() {
    Problem doubt = Problem.warning("demo-boats/dunlin/log.csv", 12, "date", "is odd", "look");
    assertThat(PdfText.flat(new PlainText().render(DueSheet.of(upkeep, List.of(doubt), 3), 200)))
        .contains("demo-boats/dunlin/log.csv:12");
  }

  @Test
  void onPaperEachDrawingStandsWholeOnASheetOfItsOwn() throws IOException {
    CutPage sheet = DueSheet.of(upkeep, List.of(), 3);
    int drawings =
        (int)
            sheet.part(Part.Role.TIME_LINE).orElseThrow().blocks().stream()
                .filter(Block.Drawing.class::isInstance)
                .count();
    byte[] pdf = PdfText.bytes(sheet, folders);
    List<String> pages = new ArrayList<>();
    try (PDDocument read = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= read.getNumberOfPages(); page++) {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(PdfText.flat(stripper.getText(read)));
      }
    }
    long fromTimeLine =
        pages.stream().dropWhile(page -> !page.contains("The coming seasons")).count();
    assertThat(fromTimeLine)
        .as("the cautions below the last drawing may go on to one more sheet")
        .isBetween((long) drawings, drawings + 1L);
    assertThat(drawings).isBetween(2, 4);
  }
}
