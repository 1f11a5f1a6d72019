package limberboard.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import limberboard.desktop.base.KeptValues;
import limberboard.desktop.base.KeptValuesFile;
import limberboard.library.file.UserFolders;

/**
 * A person's own files of the window: how they like to see things, and one file for each workspace
 * with what belongs to it.
 *
 * @param folders the person's folders
 * @param writer writes them
 * @param trouble is told when one cannot be written
 */
record OwnFiles(UserFolders folders, Executor writer, Consumer<IOException> trouble) {

  /** What is the person's, whatever the workspace. */
  KeptValues person() {
    return new KeptValuesFile(folders.config().resolve("window.txt"), writer, trouble);
  }

  /** What belongs to a workspace, told apart by the path of its folder. */
  KeptValues workspace(Path root) {
    String name = root.getFileName() == null ? "root" : root.getFileName().toString();
    UUID path = UUID.nameUUIDFromBytes(root.toString().getBytes(StandardCharsets.UTF_8));
    String file = name.replaceAll("[^A-Za-z0-9-]", "-") + "-" + path + ".txt";
    return new KeptValuesFile(
        folders.config().resolve("workspaces").resolve(file), writer, trouble);
  }
}
