package limberboard.library.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import limberboard.library.problem.Problem;

/** Reads a text file of the workspace, or says why it cannot be one. */
public final class TextFile {
  /** The largest file that is read where nothing else is said, in bytes. */
  public static final int LARGEST = 1_000_000;

  private TextFile() {}

  /**
   * What came of reading.
   *
   * @param text the text with line ends {@code \n} and without a byte-order mark, empty when there
   *     are problems
   * @param problems what is wrong
   */
  public record Result(String text, List<Problem> problems) {}

  /**
   * Reads a file of UTF-8 text that lies within a workspace; a link that leads out of it is refused
   * as it is for pages.
   *
   * @param folders the workspace
   * @param file the file
   * @param largest how many bytes it may have
   */
  public static Result read(WorkspaceFolders folders, Path file, int largest) {
    String name = folders.relative(file);
    return folders.holds(file)
        ? read(file, name, largest)
        : bad(
            name,
            "is a link that leads out of the workspace",
            "keep it as an ordinary file in its place");
  }

  /**
   * Reads a file of UTF-8 text of at most {@link #LARGEST} bytes.
   *
   * @param file the file
   * @param name what problems call it
   */
  public static Result read(Path file, String name) {
    return read(file, name, LARGEST);
  }

  private static Result read(Path file, String name, int largest) {
    try {
      return new Result(text(FileBytes.read(file, largest)), List.of());
    } catch (FileBytes.Refused e) {
      return bad(name, e.wrong(), e.right());
    } catch (CharacterCodingException e) {
      return bad(name, "is not UTF-8 text", "save it as UTF-8");
    } catch (IOException e) {
      return bad(name, "is not text", "save it as UTF-8 text or take it out of this folder");
    }
  }

  private static String text(byte[] bytes) throws IOException {
    for (byte b : bytes) {
      if (b == 0) {
        throw new IOException("a byte that no text has");
      }
    }
    String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return unmarked.replace("\r\n", "\n");
  }

  private static Result bad(String name, String wrong, String right) {
    return new Result("", List.of(Problem.error(name, 0, "", wrong, right)));
  }
}
