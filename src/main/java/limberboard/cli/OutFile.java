package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import limberboard.library.file.OutputFile;

/** Writes a file that a command was asked for, and says so; the only place that does. */
final class OutFile {
  private OutFile() {}

  /**
   * Writes it, relative to the folder the command is run in.
   *
   * @param aside whether its name goes to the error output, so that what is printed can be read by
   *     a program
   */
  static void write(CommandContext session, Path asked, byte[] bytes, boolean aside) {
    Path file = session.folder().resolve(asked);
    try {
      boolean stays = OutputFile.write(file, bytes);
      (aside || !stays ? session.err() : session.out()).println("Written: " + file);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, e.getMessage());
    }
  }
}
