package limberboard.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Tried;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.moving.PendingImport;
import limberboard.words.CountWords;
import limberboard.writing.change.Renamer;

/**
 * What was cut short when the program was stopped last time, brought to its end when a workspace is
 * opened: an import, and a renaming.
 */
final class CutShort {
  private final WorkspaceFolders folders;

  CutShort(WorkspaceFolders folders) {
    this.folders = folders;
  }

  /** Finishes both before anything else is done in the background, and says so in one line. */
  void finish(Background background, Notices notices) {
    background.run(
        "Looking for what was cut short",
        () -> Tried.of(this::finish),
        tried -> tried.told(said -> said.ifPresent(notices::tell), notices::warn));
  }

  /** What was finished, in a sentence; empty when nothing was cut short. Not the event thread. */
  Optional<String> finish() throws IOException {
    int imported = new PendingImport(folders).finish();
    boolean renaming = Files.exists(folders.root().resolve(".renaming"));
    List<Problem> left = new Renamer(folders).finish();
    String first =
        imported > 0
            ? "An import that was cut short has come to its end: "
                + CountWords.of(imported, "file")
                + "."
            : "";
    String second =
        renaming && left.isEmpty() ? "A renaming that was cut short has come to its end." : "";
    return Optional.of((first + " " + second).strip()).filter(said -> !said.isEmpty());
  }
}
