package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import limberboard.library.SafeFiles;

/** Writes a file that a command was asked for, and says so. */
final class OutFile {
  private OutFile() {}

  /**
   * Writes it, relative to the folder the command is run in.
   *
   * @param aside whether its name goes to the error output, so that what is printed can be read by
   *     a program
   */
  static void write(Session session, Path asked, byte[] bytes, boolean aside) {
    Path file = session.folder().resolve(asked);
    try {
      SafeFiles.write(file, bytes);
    } catch (IOException e) {
      throw new Failure(
          ExitCode.IO,
          file
              + " could not be written; name a file in a folder you may write to ("
              + e.getMessage()
              + ")");
    }
    (aside ? session.err() : session.out()).println("Written: " + file);
  }
}
