package limberboard.print.pdf;

import com.lowagie.text.DocumentException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;
import limberboard.print.type.InterFonts;
import limberboard.print.xhtml.Xhtml;
import org.w3c.dom.Document;
import org.xhtmlrenderer.pdf.ITextFontResolver;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.pdf.ITextTextRenderer;

/**
 * Writes pages as PDF: A4, with Inter embedded, page numbers at the foot, drawings as lines.
 * Stateless; any thread.
 */
public final class Pdf {

  /**
   * Writes a page.
   *
   * @param xhtml what {@link Xhtml} made of it, in the look of paper
   * @param base the workspace's folder, below whose {@code articles/} pictures are read
   * @param out where the PDF goes; it is not closed
   * @throws IOException when it cannot be written, or the XHTML is not well formed
   */
  public void write(String xhtml, Path base, OutputStream out) throws IOException {
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
            new PdfPictures(Pictures.in(new WorkspaceFolders(base))),
            new ITextTextRenderer());
    try {
      renderer.setDocument(document, null);
      renderer.layout();
      renderer.createPDF(out);
    } catch (DocumentException e) {
      throw new IOException("the page cannot be written as PDF: " + e.getMessage(), e);
    }
  }
}
