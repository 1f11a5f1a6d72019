package limberboard.print.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import limberboard.print.picture.ScreenPictures;
import org.xhtmlrenderer.swing.NaiveUserAgent;

/**
 * Fetches nothing for a page on screen but the renderer's own default style sheet: a page carries
 * its style sheet, and pictures come from {@link ScreenPictures}. Whatever a page names, no file is
 * opened and no connection made.
 */
public final class ClosedUserAgent extends NaiveUserAgent {
  private static final String DEFAULT_STYLE = "/resources/css/XhtmlNamespaceHandler.css";

  /** An agent for one panel. */
  public ClosedUserAgent() {
    super(0);
  }

  @Override
  public String resolveURI(String uri) {
    return uri;
  }

  @Override
  protected InputStream openStream(String uri) throws IOException {
    return openOwn(uri);
  }

  /**
   * Opens the renderer's own default style sheet.
   *
   * @throws IOException when anything else is asked for
   */
  static InputStream openOwn(String uri) throws IOException {
    URL own = NaiveUserAgent.class.getResource(DEFAULT_STYLE);
    if (own == null || !own.toString().equals(uri)) {
      throw new IOException("pages fetch nothing, and " + uri + " was asked for");
    }
    return own.openStream();
  }
}
