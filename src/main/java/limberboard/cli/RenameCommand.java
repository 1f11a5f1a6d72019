package limberboard.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;
import limberboard.words.CountWords;
import limberboard.writing.change.RenameOutcome;
import limberboard.writing.change.Renamer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code rename}: gives a page another id, everywhere. */
@Command(
    name = "rename",
    mixinStandardHelpOptions = true,
    description = {
      "Gives a page another id, with every place that names it: links and headers of pages, boats,"
          + " logs, stock, cases, letters, drills.",
      "All or nothing; should the program be killed on the way, the next command goes on with it."
    })
final class RenameCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(index = "0", paramLabel = "PAGE", description = "The page's id.")
  private String page;

  @Parameters(
      index = "1",
      paramLabel = "NEW-ID",
      description = "Its new id: lower-case letters, digits and hyphens.")
  private String to;

  @Option(names = "--json", description = "Print JSON: from, to, path, and files with places.")
  private boolean json;

  RenameCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.foldersToWrite(workspace.folder());
    Library library = session.workspace(folders).library();
    if (library.page(page).isEmpty()) {
      List<String> ids = library.pages().stream().<String>map(Page::id).toList();
      throw Failure.unknown("page", page, ids, "try find");
    }
    Renamer renamer = new Renamer(folders);
    renamer
        .bad(library, page, to)
        .ifPresent(
            problem -> {
              throw new Failure(ExitCode.USAGE, problem.toString());
            });
    RenameOutcome outcome = renamer.rename(library, page, to);
    if (outcome instanceof RenameOutcome.Renamed renamed) {
      print(renamed);
      return ExitCode.OK;
    }
    List<Problem> problems =
        outcome instanceof RenameOutcome.Refused refused
            ? refused.problems()
            : ((RenameOutcome.Unfinished) outcome).problems();
    problems.stream().skip(1).forEach(problem -> session.err().println(problem));
    String end =
        outcome instanceof RenameOutcome.Refused
            ? ""
            : "; some files have the new id and some the old one, and the next command goes on with"
                + " it";
    throw new Failure(ExitCode.IO, problems.get(0) + end);
  }

  private void print(RenameOutcome.Renamed renamed) {
    Map<String, Integer> places = renamed.places();
    if (json) {
      new JsonOutput(session.out()).print(new View(page, to, renamed.renaming().toPath(), places));
      return;
    }
    int count = places.values().stream().mapToInt(Integer::intValue).sum();
    session.out().println("Renamed: " + renamed.renaming().toPath());
    session
        .out()
        .println(
            CountWords.of(count, "place")
                + " in "
                + CountWords.of(places.size(), "file")
                + " named it, and name it anew.");
    places.forEach((file, each) -> session.out().println(file + ": " + each));
  }

  /** What {@code --json} prints. */
  record View(String from, String to, String path, Map<String, Integer> files) {}
}
