package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.PdfText;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.rigging.Rigs;
import limberboard.rigging.Rope;
import limberboard.rigging.RunningRigging;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of ropes on paper, for the repository's own boats; read back with another library. */
class RiggingSheetTest {
  private static final Path HERE = Path.of("");
  private static final Workspace WORKSPACE = Rigs.workspace(HERE);

  @TempDir Path folder;

  private static RunningRigging rigging(Boat boat) {
    return RunningRigging.of(WORKSPACE.library(), new Fitting(boat, java.time.LocalDate.EPOCH));
  }

  private static CutPage sheet(RunningRigging rigging) {
    return new RiggingSheet(WORKSPACE.library()).of(rigging);
  }

  @Test
  void everyBoatsListIsOneToThreeSheetsWithEveryRopeAndItsBoxes() throws IOException {
    assertThat(WORKSPACE.boats()).hasSize(6);
    for (Boat boat : WORKSPACE.boats()) {
      RunningRigging rigging = rigging(boat);
      byte[] pdf = PdfText.bytes(sheet(rigging), new WorkspaceFolders(HERE));
      try (PDDocument read = Loader.loadPDF(pdf)) {
        assertThat(read.getNumberOfPages()).as(boat.name()).isBetween(1, 3);
        assertThat(read.getPage(0).getMediaBox().getHeight()).isBetween(841f, 843f);
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        String text = PdfText.flat(stripper.getText(read));
        assertThat(text).contains(boat.name()).contains("caution: Rig under load");
        assertThat(text.chars().filter(c -> c == '□').count())
            .isEqualTo(2L * rigging.ropes().size());
        assertThat(rigging.ropes())
            .extracting(Rope::title)
            .allSatisfy(title -> assertThat(text).contains(title));
      }
    }
  }

  @Test
  void cautionsStandAtTheRopesAndInTwoLinesAtTheEnd() {
    CutPage page = sheet(rigging(WORKSPACE.boat("turnstone").orElseThrow()));
    assertThat(page.parts().get(page.parts().size() - 1).role())
        .isEqualTo(Part.Role.CAUTIONS_IN_FULL);
    assertThat(page.shortCautions())
        .extracting(Block.ShortCaution::id)
        .contains("rig-under-load", "under-raised-keel");
  }

  @Test
  void whatIsOpenIsSaidBeforeTheList() {
    RunningRigging rigging =
        Rigs.of(
            folder,
            "{P: 8 m}",
            "  - {id: a, title: Jib halyard, group: halyard, length: {J: 1}, construction:"
                + " hmpe-core, diameter: 8 mm}\n");
    String text = new PlainText().render(sheet(rigging), 100);
    assertThat(text).contains("Jib halyard: the page of the Sloop gives no J: measure it");
    assertThat(text.indexOf("Still open")).isBetween(0, text.indexOf("The ropes"));
    assertThat(text).contains("? (J)");
  }

  @Test
  void aModelWithoutRopesSaysSo() {
    RunningRigging none =
        new RunningRigging(
            rigging(WORKSPACE.boats().get(0)).fitting(),
            List.of(),
            rigging(WORKSPACE.boats().get(0)).cautionsOf());
    assertThat(new PlainText().render(sheet(none), 100)).contains("lists no ropes");
  }
}
