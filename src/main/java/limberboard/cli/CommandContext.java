package limberboard.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.BoatFinder;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Nearest;
import limberboard.moving.PendingImport;
import limberboard.sharing.CutShortPull;
import limberboard.workings.sums.SumUseCheck;
import limberboard.workings.sums.Sums;
import limberboard.writing.change.Renamer;

/**
 * Where a command runs: its streams, its folder and its day.
 *
 * @param in what is typed
 * @param out what the command prints
 * @param err messages
 * @param folder the folder the command is run in
 * @param installed a folder within which to look when the command is run outside any workspace
 * @param today the day that counts as today
 */
public record CommandContext(
    BufferedReader in,
    PrintWriter out,
    PrintWriter err,
    Path folder,
    Optional<Path> installed,
    LocalDate today) {

  /** What is printed goes through {@link Printed}. */
  public CommandContext {
    out = Printed.to(out, false);
    err = Printed.to(err, true);
  }

  /**
   * The workspace's folders.
   *
   * @param asked what {@code --workspace} said
   */
  WorkspaceFolders folders(Optional<Path> asked) {
    if (asked.isPresent()) {
      WorkspaceFolders folders = new WorkspaceFolders(folder.resolve(asked.get()));
      if (!Files.isDirectory(folders.articles())) {
        throw new Failure(
            ExitCode.NO_WORKSPACE,
            folders.root() + " is no workspace; a workspace has a folder articles");
      }
      return folders;
    }
    return WorkspaceFolders.around(folder)
        .or(() -> installed.flatMap(WorkspaceFolders::around))
        .orElseThrow(
            () ->
                new Failure(
                    ExitCode.NO_WORKSPACE,
                    "there is no workspace here; go to a folder with articles/ in it or above it,"
                        + " or name it with --workspace"));
  }

  /**
   * The workspace's folders for a command that writes: never those of the program's own demo unless
   * they are named or the command is run in them.
   *
   * @param asked what {@code --workspace} said
   */
  WorkspaceFolders foldersToWrite(Optional<Path> asked) {
    if (asked.isEmpty() && WorkspaceFolders.around(folder).isEmpty()) {
      throw new Failure(
          ExitCode.NO_WORKSPACE,
          "there is no workspace here, and nothing is written into another one unasked; go to a"
              + " folder with articles/ in it or above it, or name it with --workspace");
    }
    return folders(asked);
  }

  /** The same, on another day. */
  CommandContext on(LocalDate day) {
    return new CommandContext(in, out, err, folder, installed, day);
  }

  /** Reads the workspace. */
  Workspace workspace(WorkspaceFolders folders) {
    return workspace(reader(folders));
  }

  /** A reader of the workspace; what was cut short is brought to its end first. */
  WorkspaceReader reader(WorkspaceFolders folders) {
    atRest(folders);
    return new WorkspaceReader(folders, List.of(new SumUseCheck(Sums.ofTheTrade())));
  }

  /**
   * Brings to its end what was cut short when a program was killed: a pull, an import, and a
   * renaming.
   */
  void atRest(WorkspaceFolders folders) {
    try {
      new CutShortPull(folders).finish();
    } catch (IOException e) {
      err.println("a pull that was cut short cannot be gone on with: " + e.getMessage());
    }
    try {
      new PendingImport(folders).finish();
    } catch (IOException e) {
      err.println("an import that was cut short cannot be gone on with: " + e.getMessage());
    }
    new Renamer(folders).finish().forEach(err::println);
  }

  /** Reads the workspace with a reader. */
  Workspace workspace(WorkspaceReader reader) {
    try {
      return reader.read();
    } catch (IOException e) {
      throw new Failure(ExitCode.NO_WORKSPACE, "the workspace cannot be read: " + e.getMessage());
    }
  }

  /** The boat that was asked for, on this session's day: by her folder or as people name her. */
  Optional<Fitting> fitting(Workspace workspace, Optional<String> boat) {
    return boat.map(words -> new Fitting(named(workspace, words), today));
  }

  private Boat named(Workspace workspace, String words) {
    BoatFinder.Answer answer = new BoatFinder(workspace, today.getYear() + 1).named(words);
    if (answer instanceof BoatFinder.One one) {
      return one.boat();
    }
    throw answer instanceof BoatFinder.Several several
        ? new Failure(ExitCode.NOT_FOUND, several(words, several.boats()))
        : noBoat(workspace, words, ((BoatFinder.None) answer).why());
  }

  private static String several(String words, List<Boat> boats) {
    String choices =
        boats.stream()
            .map(boat -> "--boat \"" + boat.id() + "\" for " + boat.name())
            .collect(Collectors.joining(", "));
    return "\"" + words + "\" may mean several boats; write " + choices;
  }

  private static Failure noBoat(Workspace workspace, String words, String why) {
    List<String> ids = workspace.boats().stream().map(Boat::id).toList();
    String help =
        why.isEmpty()
            ? Nearest.advice(
                    words,
                    ids,
                    ids.isEmpty() ? "there are none yet" : "there are " + String.join(", ", ids))
                + "; if her folder is there, validate says what is wrong in it"
            : why;
    return new Failure(ExitCode.NOT_FOUND, "there is no boat \"" + words + "\"; " + help);
  }
}
