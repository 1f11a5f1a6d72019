package limberboard.print.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Caution;
import limberboard.library.page.Page;
import limberboard.print.PdfText;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.text.PlainText;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.shopping.MixWarning;
import limberboard.upkeep.shopping.SeasonJobs;
import limberboard.upkeep.shopping.ShoppingLine;
import limberboard.upkeep.shopping.ShoppingList;
import limberboard.upkeep.shopping.Usage;
import limberboard.workings.QuantityWords;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What to get for a whole season, on paper; the PDF is read back with another library. */
class ShoppingSheetTest {
  private static final LocalDate DAY = LocalDate.of(2025, 10, 13);
  private static WorkspaceFolders folders;
  private static ShoppingList list;
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    folders = new WorkspaceFolders(Path.of(""));
    workspace = new WorkspaceReader(folders).read();
    Fitting fitting = new Fitting(workspace.boat("dunlin").orElseThrow(), DAY);
    list =
        ShoppingList.of(
            SeasonJobs.of(Upkeep.of(workspace.library(), fitting), Optional.of(2026)),
            fitting,
            workspace.stock(fitting.boat()),
            workspace.library());
  }

  private static CutPage onPaper() {
    return new ShoppingSheet(workspace.library()).onPaper(list);
  }

  private static List<String> pages() throws IOException {
    List<String> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(onPaper(), folders))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(stripper.getText(pdf));
      }
    }
    return pages;
  }

  private static String said() {
    return dense(new PlainText().render(onPaper(), 10_000));
  }

  /** Without white space, so that no line break counts. */
  private static String dense(String text) {
    return text.replaceAll("[\\s\\u00A0]+", "");
  }

  @Test
  void aSeasonGoesOnAtMostEightSheetsWithNoShelfAloneAtTheFootOfOne() throws IOException {
    List<String> pages = pages();
    assertThat(pages).hasSizeBetween(3, 8);
    int shelves = 0;
    for (String page : pages) {
      List<String> lines = page.lines().filter(line -> !line.isBlank()).toList();
      shelves += (int) lines.stream().filter(line -> line.startsWith("Shelf: ")).count();
      List<String> above =
          lines.stream().filter(line -> !line.startsWith("Shopping list ·")).toList();
      assertThat(above.get(above.size() - 1)).doesNotStartWith("Shelf: ");
    }
    assertThat(shelves)
        .isEqualTo(
            list.toGet().stream()
                .map(line -> line.material().details().group())
                .distinct()
                .count());
  }

  @Test
  void cautionsStandAtTheMaterialsAndInTwoLinesAtTheEnd() throws IOException {
    CutPage sheet = onPaper();
    assertThat(sheet.parts().get(sheet.parts().size() - 1).role())
        .isEqualTo(Part.Role.CAUTIONS_IN_FULL);
    List<String> named =
        list.lines().stream()
            .flatMap(line -> list.cautions(line).stream())
            .map(WorkCaution::id)
            .distinct()
            .toList();
    assertThat(named).hasSizeGreaterThan(8);
    assertThat(sheet.shortCautions()).extracting(Block.ShortCaution::id).containsAll(named);
    String printed = dense(String.join("\n", pages()));
    for (String id : named) {
      Page<Caution> page = workspace.library().caution(id).orElseThrow();
      assertThat(printed).containsPattern("Caution:[^□]*" + Pattern.quote(dense(page.title())));
      assertThat(printed)
          .contains(
              dense(WorkCautions.on(workspace.library(), list.fitting()).of(page).get(0).danger()));
    }
  }

  @Test
  void noWarningAmountOrCutIsLostOnPaper() throws IOException {
    ShoppingWords words = new ShoppingWords(QuantityWords.METRIC);
    String said = said().toLowerCase(java.util.Locale.ROOT);
    assertThat(list.warnings()).isNotEmpty();
    for (MixWarning warning : list.warnings()) {
      assertThat(said)
          .contains(small(warning.what()), small(warning.why()), small(warning.source()));
    }
    assertThat(list.toGet()).hasSizeGreaterThan(30);
    for (ShoppingLine line : list.toGet()) {
      assertThat(said).contains(small(line.material().title()), small(words.buy(line)));
      words.remarks(line).forEach(remark -> assertThat(said).contains(small(remark)));
      for (Usage use : line.uses()) {
        String work = use.by().title() + ", " + words.use(line, use);
        assertThat(said).contains(small(work));
      }
    }
    list.tools().forEach(tool -> assertThat(said).contains(small(tool.tool().title())));
  }

  private static String small(String text) {
    return dense(text).toLowerCase(java.util.Locale.ROOT);
  }
}
