package limberboard.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;

/**
 * A kind of work that writes, tried in a folder that is sound at first, then spoilt, then sound.
 */
interface TriedWork {
  /** What is said of work that came to its end. */
  String DONE = "done";

  /** A page of which the file is larger than a spoilt disk takes. */
  String BIG = "articles/topics/big.md";

  /**
   * Makes the workspace.
   *
   * @param workspace its folder
   * @param elsewhere a folder that is never spoilt
   */
  void prepare(Path workspace, Path elsewhere) throws IOException;

  /** Does the work; {@link #DONE}, or what a person is told. */
  String attempt(Path workspace) throws IOException;

  /** Whether nothing has changed that a person wrote. */
  boolean isAsBefore(Path workspace) throws IOException;

  /** Whether all is as it is to be after the work. */
  boolean isDone(Path workspace) throws IOException;

  /** A page with a large body. */
  static String page(String word) {
    return "---\ntitle: Big\n---\n" + ("Ropes and knots. ".repeat(50) + word + "\n\n").repeat(200);
  }

  /** The folders of a workspace. */
  static WorkspaceFolders folders(Path workspace) {
    return new WorkspaceFolders(workspace);
  }

  /** Writes a file of a workspace. */
  static void write(Path workspace, String path, String text) throws IOException {
    Path file = workspace.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** Reads a file of a workspace; empty text when it is not there. */
  static String read(Path workspace, String path) {
    try {
      Path file = workspace.resolve(path);
      return Files.exists(file) ? Files.readString(file) : "";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
