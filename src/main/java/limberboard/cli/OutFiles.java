package limberboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import limberboard.library.file.OutputFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;

/**
 * Writes the files that a command was asked for, relative to the folder it is run in, and says so;
 * the only place that does.
 *
 * @param folders where the pictures of sheets lie
 * @param aside whether the files' names go to the error output, so that what is printed can be read
 *     by a program
 */
record OutFiles(CommandContext session, WorkspaceFolders folders, boolean aside) {
  void text(Path asked, String text) {
    write(asked, text.getBytes(StandardCharsets.UTF_8));
  }

  void bytes(Path asked, byte[] bytes) {
    write(asked, bytes);
  }

  void pdf(Path asked, CutPage sheet) {
    write(asked, pdf(sheet));
  }

  /** A sheet as PDF that is not written yet. */
  byte[] pdf(CutPage sheet) {
    try {
      return new Pdf(Pictures.in(folders)).of(sheet);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the sheet cannot be laid out as PDF: " + e.getMessage());
    }
  }

  private void write(Path asked, byte[] bytes) {
    Path file = session.folder().resolve(asked);
    try {
      boolean stays = OutputFile.write(file, bytes);
      (aside || !stays ? session.err() : session.out()).println("Written: " + file);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, e.getMessage());
    }
  }
}
