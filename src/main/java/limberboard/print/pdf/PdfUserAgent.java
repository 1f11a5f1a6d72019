package limberboard.print.pdf;

import java.io.IOException;
import java.io.InputStream;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextUserAgent;

/** Fetches nothing for a PDF; see {@link ClosedUserAgent}. */
final class PdfUserAgent extends ITextUserAgent {
  PdfUserAgent(ITextOutputDevice device, int dotsPerPixel) {
    super(device, dotsPerPixel);
  }

  @Override
  public String resolveURI(String uri) {
    return uri;
  }

  @Override
  protected InputStream openStream(String uri) throws IOException {
    return ClosedUserAgent.openOwn(uri);
  }
}
