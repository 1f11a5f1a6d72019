package limberboard.cli;

import java.io.IOException;
import java.util.Optional;
import limberboard.history.Author;
import limberboard.history.HistoryFolder;
import limberboard.history.HistoryTrouble;
import limberboard.history.Recorder;
import limberboard.library.file.WorkspaceFolders;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all commands of the history and of sharing have in common. */
final class HistoryOptions {
  @Mixin private WorkspaceOption workspace;

  @Option(
      names = "--author",
      paramLabel = "\"NAME <ADDRESS>\"",
      description = "Who records; as Git's settings say (user.name, user.email) if not given.")
  private Optional<String> author = Optional.empty();

  /** Work with a history. */
  interface Work {
    int with(HistoryFolder place) throws IOException;
  }

  /** The workspace that is written. */
  WorkspaceFolders folders(CommandContext session) {
    return session.foldersToWrite(workspace.folder());
  }

  /** Does work with the workspace's history; what goes wrong is said with the way on. */
  int inHistory(CommandContext session, Work work) throws IOException {
    WorkspaceFolders folders = folders(session);
    session.atRest(folders);
    try (HistoryFolder place = HistoryFolder.of(folders).orElse(null)) {
      if (place == null) {
        throw new Failure(
            ExitCode.NOT_FOUND,
            folders.root()
                + " has no history; limberboard history --begin makes one, an ordinary Git"
                + " repository in that folder");
      }
      return work.with(place);
    } catch (HistoryTrouble trouble) {
      throw Failure.of(trouble);
    }
  }

  /** Who records. */
  Author author(Optional<HistoryFolder> place) {
    if (author.isPresent()) {
      return Author.read(author.get())
          .orElseThrow(() -> new Failure(ExitCode.USAGE, "--author is written \"NAME <ADDRESS>\""));
    }
    return place
        .flatMap(there -> new Recorder(there).author())
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.USAGE,
                    "it is not known who records; write --author \"NAME <ADDRESS>\", or once: git"
                        + " config --global user.name NAME"));
  }
}
