package limberboard.sharing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheBuilder;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;

/** Makes a first copy of a workspace that lies elsewhere. */
public final class Copying {
  private final Connection connection;

  /** Copies over this connection. */
  public Copying(Connection connection) {
    this.connection = connection;
  }

  /**
   * Copies.
   *
   * @param address where the workspace lies
   * @param folder the new folder; it must not be there, or be empty
   * @param role whose copy it is
   * @return how many files it has
   * @throws HistoryTrouble when it cannot be copied, or holds what must not be
   */
  public int copy(String address, Path folder, CopyRole role) throws IOException {
    Path target = folder.toAbsolutePath().normalize();
    if (Files.exists(target)
        && target.toFile().list() != null
        && target.toFile().list().length > 0) {
      throw new HistoryTrouble(target + " is not empty", "name a new folder; nothing was changed");
    }
    Remote.mustBeWithoutPassword(address);
    connection.copy(address, target);
    Files.createDirectories(target.resolve("articles"));
    try (HistoryFolder place = HistoryFolder.of(new WorkspaceFolders(target)).orElseThrow()) {
      role.writeTo(place.repository());
      ObjectId head = place.repository().resolve(Constants.HEAD);
      if (head == null) {
        throw new HistoryTrouble(
            address + " has no version yet", "have it begun there with limberboard share push");
      }
      return files(place, head);
    }
  }

  private int files(HistoryFolder place, ObjectId head) throws IOException {
    Repository repository = place.repository();
    try (RevWalk walk = new RevWalk(repository)) {
      Map<String, Leaf> all = Leaf.of(walk.getObjectReader(), walk.parseCommit(head).getTree());
      WorkFiles files = new WorkFiles(place, Map.of(), all);
      files.mustBeSafe();
      files.write(connection.stage());
      list(repository, place, all);
      Recorder.moveHead(repository, head, head, "copy");
      return all.size();
    }
  }

  private static void list(Repository repository, HistoryFolder place, Map<String, Leaf> all)
      throws IOException {
    DirCache index = repository.lockDirCache();
    try {
      DirCacheBuilder builder = index.builder();
      for (Map.Entry<String, Leaf> file : all.entrySet()) {
        DirCacheEntry entry = new DirCacheEntry(file.getKey());
        entry.setFileMode(file.getValue().mode());
        entry.setObjectId(file.getValue().id());
        entry.setLength((int) Files.size(place.file(file.getKey())));
        entry.setLastModified(Files.getLastModifiedTime(place.file(file.getKey())).toInstant());
        builder.add(entry);
      }
      builder.commit();
    } finally {
      index.unlock();
    }
  }
}
