package limberboard.library;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads a text file of the workspace, or says why it cannot be one. */
public final class TextFile {
  /** The largest file that is read, in bytes. */
  public static final int LARGEST = 1_000_000;

  private TextFile() {}

  /**
   * What came of reading.
   *
   * @param text the text, empty when there are problems
   * @param problems what is wrong
   */
  public record Result(String text, List<Problem> problems) {}

  /**
   * Reads a file of UTF-8 text.
   *
   * @param file the file
   * @param name what problems call it
   */
  public static Result read(Path file, String name) {
    try {
      long size = Files.size(file);
      if (size > LARGEST) {
        return bad(name, "is " + size + " bytes long", "keep it under " + LARGEST + " bytes");
      }
      byte[] bytes = Files.readAllBytes(file);
      for (byte b : bytes) {
        if (b == 0) {
          return bad(name, "is not text", "save it as UTF-8 text or take it out of this folder");
        }
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new Result(text.replace("\r\n", "\n"), List.of());
    } catch (CharacterCodingException e) {
      return bad(name, "is not UTF-8 text", "save it as UTF-8");
    } catch (IOException e) {
      return bad(name, "cannot be read: " + e.getMessage(), "check that it may be read");
    }
  }

  private static Result bad(String name, String wrong, String right) {
    return new Result("", List.of(Problem.error(name, 0, "", wrong, right)));
  }
}
