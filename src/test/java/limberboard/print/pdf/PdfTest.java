package limberboard.print.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import limberboard.library.page.Kind;
import limberboard.print.PdfText;
import limberboard.print.SmallYard;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.print.picture.Pictures;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** PDFs, read back with another library. */
class PdfTest {
  private final SmallYard yard = new SmallYard();

  @Test
  void aPageIsA4WithItsTitleAndPageNumbers() throws IOException {
    try (PDDocument pdf = read(yard.cut("renew-seal", "avocet"))) {
      assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("Renew the drive's seal");
      PDRectangle box = pdf.getPage(0).getMediaBox();
      assertThat(box.getWidth()).isCloseTo(PDRectangle.A4.getWidth(), within(1f));
      assertThat(box.getHeight()).isCloseTo(PDRectangle.A4.getHeight(), within(1f));
      int pages = pdf.getNumberOfPages();
      assertThat(pages).isGreaterThan(1);
      for (int i = 1; i <= pages; i++) {
        assertThat(text(pdf, i))
            .contains("Page " + i + " of " + pages)
            .contains("Renew the drive's seal · Cut to Avocet: Cruiser, hull 3, built 2012");
      }
    }
  }

  @Test
  void cautionsStandBeforeTheSteps() {
    assertThat(PdfText.of(yard, yard.cut("renew-seal", "avocet")))
        .containsSubsequence(
            "Caution: Boat ashore. A boat on props can fall.",
            "Caution: Vapour.",
            "Caution: Fire.",
            "Open the leg.",
            "Press the seal out.",
            "The cautions in full",
            "Caution: Boat ashore",
            "Caution: Vapour (Sealant)",
            "Caution: Fire (Solvent)");
  }

  @Test
  void allFontsAreEmbedded() throws IOException {
    CutPage page =
        page(
            new Block.Paragraph(
                List.of(
                    new Inline.Text("plain "),
                    new Inline.Strong(Inline.text("strong ")),
                    new Inline.Emphasis(Inline.text("stressed ")),
                    new Inline.Strong(List.of(new Inline.Emphasis(Inline.text("both ")))),
                    new Inline.Code("code"))),
            new Block.Verbatim("kept\n  as it is"));
    try (PDDocument pdf = read(page)) {
      List<PDFont> fonts = new ArrayList<>();
      for (PDPage sheet : pdf.getPages()) {
        for (COSName name : sheet.getResources().getFontNames()) {
          fonts.add(sheet.getResources().getFont(name));
        }
      }
      assertThat(fonts).hasSizeGreaterThanOrEqualTo(4);
      assertThat(fonts)
          .allSatisfy(font -> assertThat(font.isEmbedded()).as(font.getName()).isTrue())
          .allSatisfy(font -> assertThat(font.getName()).contains("Inter"));
    }
  }

  @Test
  void theSignsThatPagesUseArePrinted() {
    String signs = "15 °C · 400 × 6 mm ½ – “x” ‘y’ … ≥ ≤ ± √ µ Ω ² ³ → é";
    assertThat(PdfText.of(yard, page(Block.Paragraph.of(signs)))).contains(signs);
  }

  @Test
  void aDrawingStaysLinesAndHasNoPixels() throws IOException {
    try (PDDocument pdf = read(yard.cut("reading", "avocet"))) {
      List<PDFormXObject> drawings = new ArrayList<>();
      for (COSName name : pdf.getPage(0).getResources().getXObjectNames()) {
        assertThat(pdf.getPage(0).getResources().isImageXObject(name)).isFalse();
        if (pdf.getPage(0).getResources().getXObject(name) instanceof PDFormXObject form) {
          drawings.add(form);
        }
      }
      assertThat(drawings).isNotEmpty();
      assertThat(drawings.get(0).getBBox().getWidth()).isEqualTo(200f);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {30, 33, 36, 39, 42, 45})
  void aDrawingIsNotDividedBetweenTwoPages(int linesBefore) throws IOException {
    List<Block> blocks =
        new ArrayList<>(Collections.nCopies(linesBefore, new Block.Verbatim("line")));
    blocks.add(
        new Block.Paragraph(List.of(new Inline.Picture("articles/pictures/side.svg", "side"))));
    int sheets = 0;
    try (PDDocument pdf = read(page(blocks.toArray(Block[]::new)))) {
      for (PDPage sheet : pdf.getPages()) {
        for (COSName name : sheet.getResources().getXObjectNames()) {
          sheets += sheet.getResources().getXObject(name) instanceof PDFormXObject ? 1 : 0;
        }
      }
    }
    assertThat(sheets).isEqualTo(1);
  }

  @Test
  void linksAreNotLinksOnPaper() throws IOException {
    try (PDDocument pdf = read(yard.cut("reading", "avocet"))) {
      assertThat(pdf.getPage(0).getAnnotations()).isEmpty();
      assertThat(text(pdf, 1)).contains("See the seal");
    }
  }

  @Test
  void aDrawingThatCannotBeShownIsSaidInWords() throws IOException {
    String shape = "<rect width=\"1\" height=\"1\"/>";
    String small =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">" + shape + "</svg>";
    String large = small.replace(shape, shape.repeat(5000));
    try (PDDocument pdf = read(page(new Block.Drawing(small, "one square")))) {
      assertThat(text(pdf, 1)).doesNotContain("one square");
    }
    try (PDDocument pdf = read(page(new Block.Drawing(large, "many squares")))) {
      assertThat(text(pdf, 1)).contains("[picture: many squares]");
    }
  }

  @Test
  void whatIsNotWellFormedIsRefused() {
    assertThatThrownBy(() -> new Pdf(Pictures.none()).of("<p>"))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("not well-formed");
    assertThatThrownBy(
            () -> new Pdf(Pictures.none()).of("<!DOCTYPE html [<!ENTITY a 'b'>]><html/>"))
        .isInstanceOf(IOException.class);
  }

  private static CutPage page(Block... blocks) {
    return new CutPage(
        "x", Kind.TOPIC, "X", "", "", List.of(new Part(Part.Role.BODY, "", List.of(blocks))));
  }

  private PDDocument read(CutPage page) throws IOException {
    return Loader.loadPDF(PdfText.bytes(page, yard.folders()));
  }

  private static String text(PDDocument pdf, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setSortByPosition(true);
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return PdfText.flat(stripper.getText(pdf));
  }
}
