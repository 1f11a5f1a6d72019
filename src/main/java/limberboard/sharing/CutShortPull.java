package limberboard.sharing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.history.HistoryFolder;
import limberboard.history.RepositoryLock;
import limberboard.library.file.WorkspaceFolders;
import org.eclipse.jgit.lib.Constants;

/**
 * A pull whose program was killed while it changed the workspace's files, brought to its end when
 * the workspace is opened. Otherwise the next pages that are saved would stand among files of which
 * some are old and some new, and the whole would be taken for this copy's own changes.
 *
 * @param folders the workspace
 */
public record CutShortPull(WorkspaceFolders folders) {

  /**
   * Brings it to its end, unless there is none, or another program is at it.
   *
   * @return whether there was one, and all its files are there now
   */
  public boolean finish() throws IOException {
    if (!mayBe()) {
      return false;
    }
    Optional<HistoryFolder> found = HistoryFolder.of(folders);
    if (found.isEmpty()) {
      return false;
    }
    try (HistoryFolder place = found.get()) {
      MoveOn pull = new MoveOn(place);
      if (!pull.isCutShort()) {
        return false;
      }
      Optional<RepositoryLock> free = RepositoryLock.ifFree(place.repository());
      if (free.isEmpty()) {
        return false;
      }
      RepositoryLock lock = free.get();
      try (lock) {
        return pull.goneOn(HowFar.silent());
      }
    }
  }

  /** Looks for the note alone, so that a command that only reads does not wait for a repository. */
  private boolean mayBe() {
    Path at = folders.root().toAbsolutePath();
    while (at != null) {
      Path git = at.resolve(Constants.DOT_GIT);
      if (Files.isDirectory(git)) {
        return Files.exists(git.resolve(MoveOn.NOTE));
      }
      if (Files.exists(git)) {
        return true;
      }
      at = at.getParent();
    }
    return false;
  }
}
