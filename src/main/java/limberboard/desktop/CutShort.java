package limberboard.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Tried;
import limberboard.library.file.WorkspaceFolders;
import limberboard.moving.PendingImport;
import limberboard.sharing.CutShortPull;
import limberboard.words.CountWords;
import limberboard.writing.change.Renamer;

/**
 * What was cut short when the program was stopped last time, brought to its end when a workspace is
 * opened: a pull, an import, and a renaming.
 */
final class CutShort {
  private final WorkspaceFolders folders;

  CutShort(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /** Finishes all before anything else is done in the background, and says so in one line. */
  void finish(Background background, Notices notices) {
    background.run(
        "Looking for what was cut short",
        () -> Tried.of(this::finish),
        tried -> tried.told(said -> said.ifPresent(notices::tell), notices::warn));
  }

  /** What was finished, in a sentence; empty when nothing was cut short. Not the event thread. */
  Optional<String> finish() throws IOException {
    List<String> said = new ArrayList<>();
    if (new CutShortPull(folders).finish()) {
      said.add("A pull that was cut short has come to its end.");
    }
    int imported = new PendingImport(folders).finish();
    if (imported > 0) {
      said.add(
          "An import that was cut short has come to its end: "
              + CountWords.of(imported, "file")
              + ".");
    }
    boolean renaming = Files.exists(folders.root().resolve(".renaming"));
    if (new Renamer(folders).finish().isEmpty() && renaming) {
      said.add("A renaming that was cut short has come to its end.");
    }
    return Optional.of(String.join(" ", said)).filter(any -> !any.isEmpty());
  }
}
