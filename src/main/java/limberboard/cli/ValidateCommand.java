package limberboard.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.library.Problem;
import limberboard.library.WorkspaceFolders;
import limberboard.search.SearchWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code validate}: checks every file of the workspace. */
@Command(
    name = "validate",
    mixinStandardHelpOptions = true,
    description = {
      "Checks every file of the workspace.",
      "Prints one line a problem (file, line, key, what is wrong, what would be right) and counts."
          + " The exit code is 1 when there are errors; warnings alone leave it 0."
    })
final class ValidateCommand implements Callable<Integer> {
  private final Session session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ValidateCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    List<Problem> problems = new ArrayList<>(read.problems());
    problems.addAll(SearchWords.read(folders).problems());
    Counts counts = Counts.of(read);
    if (json) {
      new JsonOutput(session.out())
          .print(new Validation(counts, problems.stream().map(JsonProblem::of).toList()));
    } else {
      print(problems, counts);
    }
    boolean errors = problems.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
    return errors ? ExitCode.PROBLEMS : ExitCode.OK;
  }

  private void print(List<Problem> problems, Counts counts) {
    problems.forEach(problem -> session.out().println(problem));
    session.out().println(counts.sentence());
    session.out().println(problems.size() == 1 ? "1 problem" : problems.size() + " problems");
  }

  /** What {@code --json} prints. */
  record Validation(Counts counts, List<JsonProblem> problems) {}

  /** A problem as {@code --json} prints it. */
  record JsonProblem(
      String severity, String file, int line, String key, String wrong, String right) {
    static JsonProblem of(Problem p) {
      return new JsonProblem(
          p.severity().name().toLowerCase(Locale.ROOT),
          p.file(),
          p.line(),
          p.key(),
          p.wrong(),
          p.right());
    }
  }
}
