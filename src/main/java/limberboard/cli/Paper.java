package limberboard.cli;

import java.io.IOException;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;

/** Puts sheets on paper. */
final class Paper {
  private Paper() {}

  /**
   * The sheet as PDF.
   *
   * @param folders where its pictures lie
   * @throws Failure when it cannot be laid out
   */
  static byte[] pdf(CutPage sheet, WorkspaceFolders folders) {
    try {
      return new Pdf(Pictures.in(folders)).of(sheet);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the sheet cannot be laid out as PDF: " + e.getMessage());
    }
  }
}
