package limberboard.library.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The folders of a workspace that the system is asked to watch: those with files of interest, with
 * everything below them, and the folders in which one of those may come to be. Safe for several
 * threads.
 */
public final class WatchedFolders {
  private final WorkspaceFolders workspace;
  private final WatchService service;
  private final Map<Path, WatchKey> watched = new HashMap<>();

  public WatchedFolders(WorkspaceFolders workspace, WatchService service) {
    this.workspace = workspace;
    this.service = service;
  }

  /** The folders of a workspace whose files matter, as far as they are there. */
  public static List<Path> ofInterest(WorkspaceFolders workspace) {
    return Stream.of(workspace.articles(), workspace.boats(), workspace.words())
        .filter(Files::isDirectory)
        .toList();
  }

  /** Hidden and temporary files come and go without meaning anything. */
  public static boolean isHidden(Path path) {
    Path name = path.getFileName();
    return name != null && name.toString().startsWith(".");
  }

  /**
   * Asks for every folder that is there and not watched yet, and forgets those that are gone.
   *
   * @return whether every folder is watched; the system may refuse when there are too many
   */
  public synchronized boolean renew() {
    Set<Path> wanted = wanted();
    watched.entrySet().removeIf(entry -> isOver(entry.getKey(), entry.getValue(), wanted));
    boolean all = true;
    for (Path folder : wanted) {
      if (!watched.containsKey(folder)) {
        all &= watch(folder);
      }
    }
    return all;
  }

  private static boolean isOver(Path folder, WatchKey key, Set<Path> wanted) {
    if (key.isValid() && wanted.contains(folder)) {
      return false;
    }
    key.cancel();
    return true;
  }

  private boolean watch(Path folder) {
    try {
      watched.put(
          folder,
          folder.register(
              service,
              StandardWatchEventKinds.ENTRY_CREATE,
              StandardWatchEventKinds.ENTRY_MODIFY,
              StandardWatchEventKinds.ENTRY_DELETE));
      return true;
    } catch (IOException e) {
      return !Files.isDirectory(folder);
    }
  }

  private Set<Path> wanted() {
    Set<Path> wanted = new HashSet<>();
    Stream.of(workspace.root(), workspace.words().getParent())
        .filter(Files::isDirectory)
        .forEach(wanted::add);
    VisibleFiles visible = new VisibleFiles();
    ofInterest(workspace).forEach(visible::in);
    wanted.addAll(visible.folders());
    return wanted;
  }
}
