package limberboard.library.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file that a person asked for: a sheet, a table, a calendar. Folders are not made
 * unasked, an ordinary file is replaced safely ({@link SafeFiles}), and a pipe or a device such as
 * {@code /dev/stdout} is written to and stays what it is.
 */
public final class OutputFile {
  private OutputFile() {}

  /**
   * Writes it.
   *
   * @return whether it is an ordinary file, which stays
   * @throws IOException when it cannot be written; the message names the file, the reason and what
   *     to do, and an old file is then still there, whole
   */
  public static boolean write(Path file, byte[] bytes) throws IOException {
    Path target = file.toAbsolutePath().normalize();
    Path folder = target.getParent();
    if (target.getFileName() == null || Files.isDirectory(target)) {
      throw refused(target, "it is a folder", "name a file in it");
    }
    if (target.getFileName().toString().equals("-")) {
      throw refused(
          target, "- is no file here", "name a file, or /dev/stdout for the standard output");
    }
    if (!Files.isDirectory(folder)) {
      throw refused(target, "there is no folder " + folder, "make it first, or name another file");
    }
    try {
      if (isSpecial(target)) {
        pass(target, bytes);
        return false;
      }
      SafeFiles.write(Files.isSymbolicLink(target) ? target.toRealPath() : target, bytes);
      return true;
    } catch (IOException e) {
      throw refused(
          target,
          FileTrouble.reason(e),
          "name a file in a folder you may write to, with room in it");
    }
  }

  /** Pipes and devices, and whatever lies among the system's own. */
  private static boolean isSpecial(Path target) throws IOException {
    return Files.exists(target)
        && (!Files.isRegularFile(target)
            || target.startsWith("/dev")
            || target.toRealPath().startsWith("/proc"));
  }

  private static void pass(Path target, byte[] bytes) throws IOException {
    try (OutputStream out = Files.newOutputStream(target, StandardOpenOption.WRITE)) {
      out.write(bytes);
    }
  }

  private static IOException refused(Path target, String why, String instead) {
    return new Refused(target + " could not be written: " + why + "; " + instead);
  }

  /** A file was not written; the message says the rest. */
  private static final class Refused extends IOException {
    @java.io.Serial private static final long serialVersionUID = 1L;

    Refused(String message) {
      super(message);
    }
  }
}
