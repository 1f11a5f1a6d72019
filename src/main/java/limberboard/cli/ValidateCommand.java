package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.FutureEntries;
import limberboard.boat.Workspace;
import limberboard.drill.file.CoursePages;
import limberboard.findings.PlanWarnings;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.proofread.Proofreader;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.search.SearchWords;
import limberboard.words.CountWords;
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
          + " The exit code is 1 when there are errors; warnings alone leave it 0.",
      "With --strategies it also follows the plan for every symptom on every boat, which may take"
          + " minutes, and prints as advice what the plans make no use of."
    })
final class ValidateCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--strategies",
      description = "Also say which mends, checks and causes the plans make no use of.")
  private boolean strategies;

  ValidateCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    List<Problem> problems = new ArrayList<>(read.problems());
    FutureEntries future = new FutureEntries(folders, session.today());
    read.boats().forEach(boat -> problems.addAll(future.of(boat)));
    problems.addAll(SearchWords.read(folders).problems());
    TradeWordsFile words = TradeWordsFile.read(folders, read.library());
    problems.addAll(words.problems());
    Proofreader proofreader = new Proofreader(folders, read.library(), words.words());
    read.library().pages().forEach(page -> problems.addAll(proofreader.grave(page)));
    problems.addAll(new CoursePages(read, session.today()).problems(folders));
    PlanWarnings reviews = new PlanWarnings(folders, read, session.today());
    problems.addAll(reviews.warnings());
    Optional<List<Problem>> advice =
        strategies ? Optional.of(reviews.advice(this::begun)) : Optional.empty();
    Counts counts = Counts.of(read);
    if (json) {
      new JsonOutput(session.out())
          .print(new Validation(counts, JsonProblem.all(problems), advice.map(JsonProblem::all)));
    } else {
      print(problems, counts);
      advice.ifPresent(this::printAdvice);
    }
    boolean errors = problems.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
    return errors ? ExitCode.PROBLEMS : ExitCode.OK;
  }

  private void begun(String page) {
    session.err().println("following the plans of " + page);
    session.err().flush();
  }

  private void print(List<Problem> problems, Counts counts) {
    problems.forEach(problem -> session.out().println(problem));
    session.out().println(counts.sentence());
    session.out().println(CountWords.of(problems.size(), "problem"));
  }

  private void printAdvice(List<Problem> advice) {
    advice.forEach(piece -> session.out().println(piece));
    session.out().println(CountWords.of(advice.size(), "piece of advice", "pieces of advice"));
  }

  /** What {@code --json} prints; advice only where it was asked for. */
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record Validation(
      Counts counts, List<JsonProblem> problems, Optional<List<JsonProblem>> advice) {}

  /** A problem as {@code --json} prints it. */
  record JsonProblem(
      String severity, String file, int line, String key, String wrong, String right) {
    static List<JsonProblem> all(List<Problem> problems) {
      return problems.stream().map(JsonProblem::of).toList();
    }

    private static JsonProblem of(Problem p) {
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
