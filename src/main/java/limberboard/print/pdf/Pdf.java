package limberboard.print.pdf;

import com.lowagie.text.DocumentException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import limberboard.print.page.CutPage;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.type.InterFonts;
import limberboard.print.xhtml.Xhtml;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;

/**
 * Writes pages as PDF: A4, with Inter embedded, page numbers at the foot, drawings as lines. Any
 * thread.
 */
public final class Pdf {
  private final Pictures pictures;

  /** A writer of pages with these pictures. */
  public Pdf(Pictures pictures) {
    this.pictures = pictures;
  }

  /**
   * A page, or a sheet, as a PDF file.
   *
   * @throws IOException when it cannot be laid out
   */
  public byte[] of(CutPage page) throws IOException {
    return of(new Xhtml(pictures).render(page, Look.PAPER));
  }

  /** What was rendered for paper, as a PDF file. */
  byte[] of(String xhtml) throws IOException {
    Document document = StrictXml.parse(xhtml);
    float dotsPerPoint = ITextRenderer.DEFAULT_DOTS_PER_POINT;
    int dotsPerPixel = ITextRenderer.DEFAULT_DOTS_PER_PIXEL;
    ITextFontResolver fonts = new ITextFontResolver();
    InterFonts.register(fonts);
    ITextOutputDevice device = new ITextOutputDevice(dotsPerPoint);
    ITextRenderer renderer =
        new ITextRenderer(
            dotsPerPoint,
            dotsPerPixel,
            device,
            new PdfUserAgent(device, dotsPerPixel),
            fonts,
            new PdfPictures(pictures),
            new ITextTextRenderer());
    try {
      renderer.setDocument(document, null);
      renderer.layout();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      renderer.createPDF(out);
      return out.toByteArray();
    } catch (DocumentException e) {
      throw new IOException("the page cannot be written as PDF: " + e.getMessage(), e);
    }
  }
}
