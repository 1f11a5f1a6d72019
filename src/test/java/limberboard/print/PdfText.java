package limberboard.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Writes PDFs and reads them back with another library. */
public final class PdfText {
  private PdfText() {}

  /** A page as PDF, with the pictures of a workspace. */
  public static byte[] bytes(CutPage page, WorkspaceFolders folders) {
    try {
      return new Pdf(Pictures.in(folders)).of(page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All text of a page written as PDF, line by line across the sheet, with single spaces. */
  public static String of(SmallYard yard, CutPage page) {
    return of(yard, page, true);
  }

  /** The same in the order in which it is written: one column after the other. */
  public static String byColumn(SmallYard yard, CutPage page) {
    return of(yard, page, false);
  }

  private static String of(SmallYard yard, CutPage page, boolean across) {
    try (PDDocument read = Loader.loadPDF(bytes(page, yard.folders()))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(across);
      return flat(stripper.getText(read));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text with single spaces for all white space. */
  public static String flat(String text) {
    return text.replaceAll("[\\s\\u00A0]+", " ");
  }
}
