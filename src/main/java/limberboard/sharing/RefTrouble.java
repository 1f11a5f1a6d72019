package limberboard.sharing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.history.HistoryTrouble;
import org.eclipse.jgit.lib.RefUpdate;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.transport.TrackingRefUpdate;

/** What git's own names for versions say when they cannot be moved on: never passed over. */
final class RefTrouble {
  private RefTrouble() {}

  /**
   * Does nothing where a name was moved on, or had no need to be.
   *
   * @throws HistoryTrouble when another program holds it, or it cannot be written
   */
  static void unlessDone(Repository repository, String name, RefUpdate.Result result)
      throws IOException {
    switch (result) {
      case NEW, FAST_FORWARD, FORCED, NO_CHANGE, NOT_ATTEMPTED -> {}
      default -> {
        Path lock = repository.getDirectory().toPath().resolve(name + ".lock");
        throw Files.exists(lock)
            ? new HistoryTrouble(
                "git is working in this repository at the moment, or was stopped while it did",
                "try again; if it stays so, take away " + lock)
            : new HistoryTrouble(
                "the history could not be written (" + name + ": " + result + ")",
                "see whether the folder .git may be written and the disk has room");
      }
    }
  }

  /** The same for what a fetch has moved on. */
  static void unlessDone(Repository repository, TrackingRefUpdate update) throws IOException {
    unlessDone(repository, update.getLocalName(), update.getResult());
  }
}
