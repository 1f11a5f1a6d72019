package limberboard.desktop.workspace.share;

import java.io.IOException;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.CopyRole;
import limberboard.history.HistoryFolder;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Own;
import limberboard.sharing.Asking;
import limberboard.sharing.Connection;
import limberboard.sharing.HowFar;
import limberboard.sharing.Sharing;

/**
 * With what a workspace is shared. Immutable.
 *
 * @param with the other copy's address as it may be shown; empty while none is named
 * @param role whose this copy is
 * @param recorder who records by Git's settings
 * @param unrecorded how many files hold what is in no version
 */
record ShareState(Optional<String> with, Own role, Optional<Author> recorder, int unrecorded) {

  /** Looks; not for the event thread. Empty where the workspace has no history. */
  static Optional<ShareState> of(WorkspaceFolders folders) throws IOException {
    try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
      if (place == null) {
        return Optional.empty();
      }
      Connection none = Connection.ofMachine(Asking.nobody(), HowFar.silent());
      Recorder recorder = new Recorder(place);
      return Optional.of(
          new ShareState(
              new Sharing(place, none).with(),
              CopyRole.of(place.repository()).role(),
              recorder.author(),
              recorder.unrecorded().size()));
    }
  }
}
