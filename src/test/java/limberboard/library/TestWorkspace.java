package limberboard.library;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.library.file.WorkspaceFolders;

/** A small workspace in a folder of a test. */
public final class TestWorkspace {
  private static final String DRAWING =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0h9\"/></svg>";

  private final WorkspaceFolders folders;

  /** Makes a workspace with the pages that stand around the header examples. */
  public TestWorkspace(Path root) {
    folders = new WorkspaceFolders(root);
    write("articles/pictures/side.svg", DRAWING);
    write("articles/pictures/top.svg", DRAWING);
    write(
        "articles/pictures/script.svg",
        "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>");
    for (SpecExamples.Block block :
        SpecExamples.read("/limberboard/library/headers.spec.md").common()) {
      write("articles/" + block.rest(), block.text());
    }
  }

  /** Its folders. */
  public WorkspaceFolders folders() {
    return folders;
  }

  /** Writes a file, relative to the workspace. */
  public Path write(String file, String text) {
    try {
      Path path = folders.root().resolve(file);
      Files.createDirectories(path.getParent());
      return Files.writeString(path, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads the library. */
  public Library library() {
    try {
      return new LibraryReader(folders).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
