package limberboard.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.PdfText;
import limberboard.print.page.CutPage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A sheet as it is printed: the text of each page, and the letters below nine points. */
final class PrintedSheets extends PDFTextStripper {
  private static final double LEAST_POINTS = 8.99;

  private final StringBuilder small = new StringBuilder();
  private final List<String> pages = new ArrayList<>();

  PrintedSheets(CutPage sheet, WorkspaceFolders folders) throws IOException {
    try (PDDocument pdf = Loader.loadPDF(PdfText.bytes(sheet, folders))) {
      for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
        setStartPage(page);
        setEndPage(page);
        pages.add(getText(pdf));
      }
    }
  }

  /** The letters that are too small. */
  String small() {
    return small.toString();
  }

  /**
   * The text of each page.
   *
   * @param dense how white space is taken out of it
   */
  List<String> pages(UnaryOperator<String> dense) {
    return pages.stream().map(dense).toList();
  }

  @Override
  protected void processTextPosition(TextPosition text) {
    super.processTextPosition(text);
    if (text.getYScale() < LEAST_POINTS) {
      small.append(text.getUnicode());
    }
  }
}
