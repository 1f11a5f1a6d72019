package limberboard.print.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import limberboard.print.picture.Pictures;

/** Writes XHTML that no page would become as PDF. */
public final class RawPdf {
  private RawPdf() {}

  /** The XHTML as PDF. */
  public static byte[] bytes(String xhtml, Pictures pictures) {
    try {
      return new Pdf(pictures).of(xhtml);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
