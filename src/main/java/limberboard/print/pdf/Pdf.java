package limberboard.print.pdf;

import com.lowagie.text.DocumentException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
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

  /**
   * Several sheets in one PDF file, each beginning on a page of its own with its own page numbers.
   *
   * @param pages at least one
   * @throws IOException when one cannot be laid out
   */
  public byte[] of(List<CutPage> pages) throws IOException {
    List<String> rendered =
        pages.stream().map(page -> new Xhtml(pictures).render(page, Look.PAPER)).toList();
    return ofRendered(rendered);
  }

  /** What was rendered for paper, as a PDF file. */
  byte[] of(String xhtml) throws IOException {
    return ofRendered(List.of(xhtml));
  }

  private byte[] ofRendered(List<String> xhtml) throws IOException {
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
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      for (int i = 0; i < xhtml.size(); i++) {
        Document document = StrictXml.parse(xhtml.get(i));
        renderer.setDocument(document, null);
        renderer.layout();
        if (i == 0) {
          renderer.createPDF(out, false);
        } else {
          renderer.writeNextDocument();
        }
      }
      renderer.finishPDF();
      return out.toByteArray();
    } catch (DocumentException e) {
      throw new IOException("the page cannot be written as PDF: " + e.getMessage(), e);
    }
  }
}
