package limberboard.library;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;

/** Makes empty workspaces: the folders {@code articles}, {@code index} and {@code boats}. */
public final class NewWorkspace {
  private NewWorkspace() {}

  /**
   * Makes a workspace in a folder, which is made too if need be. What lies in the folder stays.
   *
   * @return the workspace
   * @throws IOException when it is a workspace already, or cannot be written
   */
  public static WorkspaceFolders in(Path root) throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(root);
    if (Files.exists(folders.articles())) {
      throw new FileAlreadyExistsException(
          folders.articles().toString(), null, "it is a workspace already");
    }
    for (Path folder : folders(folders)) {
      Files.createDirectories(folder);
    }
    return folders;
  }

  private static List<Path> folders(WorkspaceFolders folders) {
    Stream<Path> kinds =
        Stream.of(Kind.values()).map(kind -> folders.articles().resolve(kind.folder()));
    Stream<Path> others =
        Stream.of(
            folders.articles().resolve("pictures"),
            folders.words(),
            folders.root().resolve("boats"));
    return Stream.concat(kinds, others).toList();
  }
}
