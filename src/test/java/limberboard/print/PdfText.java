package limberboard.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Look;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Writes PDFs and reads them back with another library. */
public final class PdfText {
  private PdfText() {}

  public static byte[] bytes(String xhtml, Path base) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      new Pdf().write(xhtml, base, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All text of a page written as PDF, with single spaces. */
  public static String of(SmallYard yard, CutPage page) {
    try (PDDocument read =
        Loader.loadPDF(bytes(yard.xhtml(page, Look.PAPER), yard.folders().root()))) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
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
