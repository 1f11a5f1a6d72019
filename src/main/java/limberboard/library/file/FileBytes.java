package limberboard.library.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.problem.PlainTrouble;

/**
 * Reads an ordinary file up to a stated size, and nothing else: a pipe, a device or an endless file
 * in the place of one is refused before it can hold the program up or fill its memory.
 */
public final class FileBytes {
  private FileBytes() {}

  /** A file that is not read, in words for its reader. */
  public static final class Refused extends PlainTrouble {
    private static final long serialVersionUID = 1L;

    private Refused(String wrong, String right) {
      super(wrong, right);
    }
  }

  /**
   * Whether something stands at this path, be it only a link to nothing.
   *
   * @param file any path
   */
  public static boolean isThere(Path file) {
    return Files.exists(file) || Files.isSymbolicLink(file);
  }

  /**
   * Reads a whole file.
   *
   * @param file the file
   * @param largest how many bytes it may have
   * @throws Refused when it is no ordinary file, is longer, or cannot be read
   */
  public static byte[] read(Path file, int largest) throws Refused {
    if (Files.isSymbolicLink(file) && !Files.exists(file)) {
      throw new Refused("is a link that leads to nothing", "mend the link or take it away");
    }
    if (Files.isDirectory(file)) {
      throw new Refused("is a folder where a file belongs", "rename it or take it away");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new Refused(
          "is not an ordinary file (a pipe or a device)", "put an ordinary file in its place");
    }
    return bytes(file, largest);
  }

  private static byte[] bytes(Path file, int largest) throws Refused {
    try {
      long size = Files.size(file);
      if (size > largest) {
        throw tooLong("is " + size + " bytes long", largest);
      }
      try (InputStream in = Files.newInputStream(file)) {
        byte[] bytes = in.readNBytes(largest + 1);
        if (bytes.length > largest) {
          throw tooLong("is longer than it says", largest);
        }
        return bytes;
      }
    } catch (AccessDeniedException e) {
      throw new Refused("may not be read", "change its permissions so that you may read it");
    } catch (Refused e) {
      throw e;
    } catch (IOException e) {
      throw new Refused("cannot be read" + reason(e), "check that it may be read");
    }
  }

  private static Refused tooLong(String wrong, int largest) {
    return new Refused(wrong, "keep it under " + largest + " bytes");
  }

  private static String reason(IOException e) {
    boolean said = e instanceof FileSystemException system && system.getReason() != null;
    return said ? ": " + ((FileSystemException) e).getReason() : "";
  }
}
