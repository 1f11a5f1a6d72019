package limberboard.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.xhtml.Xhtml;

/** Puts sheets on paper. */
final class Paper {
  private Paper() {}

  /**
   * The sheet as PDF.
   *
   * @param folders where its pictures lie
   * @throws IOException when it cannot be laid out
   */
  static byte[] pdf(CutPage sheet, WorkspaceFolders folders) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    String xhtml = new Xhtml(Pictures.in(folders)).render(sheet, Look.PAPER);
    new Pdf().write(xhtml, folders.root(), bytes);
    return bytes.toByteArray();
  }
}
