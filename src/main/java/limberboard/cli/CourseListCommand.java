package limberboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.file.CourseFiles;
import limberboard.drill.file.KeptDrill;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code course list}: what a course holds, and what of it cannot be played here. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = {
      "Lists the drills of a course with their numbers, and says which cannot be played here and"
          + " why.",
      "With --hidden also what is hidden, for the trainer."
    })
final class CourseListCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "FILE", description = "The course's file.")
  private Path file;

  @Option(names = "--hidden", description = "Say what is hidden.")
  private boolean hidden;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CourseListCommand(CommandContext session) {
    this.session = session;
  }

  /** A drill of a course as {@code --json} prints it; the keys are documented and stay. */
  record Row(
      int number,
      String symptom,
      String boat,
      long seed,
      Optional<String> cause,
      Optional<String> wrong) {}

  /** The course. */
  record View(String title, List<Row> drills, List<String> problems) {}

  /** The course of a file, with what is wrong in it said. */
  static CourseFiles.Read read(CommandContext session, Path asked) {
    CourseFiles.Read read = new CourseFiles().read(session.folder().resolve(asked));
    read.problems().forEach(problem -> session.err().println(problem));
    if (read.course().isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, asked + " is no course that can be read");
    }
    return read;
  }

  @Override
  public Integer call() {
    Workspace workspaceRead = session.workspace(session.folders(workspace.folder()));
    CourseFiles.Read read = read(session, file);
    CourseFiles.Course course = read.course().orElseThrow();
    List<Row> rows = new ArrayList<>();
    for (KeptDrill kept : course.drills()) {
      rows.add(row(new DrillMaker(session, workspaceRead), rows.size() + 1, kept));
    }
    if (json) {
      List<String> problems = read.problems().stream().map(Object::toString).toList();
      new JsonOutput(session.out()).print(new View(course.title(), rows, problems));
    } else {
      session.out().println(course.title());
      rows.forEach(this::print);
    }
    boolean good = read.problems().isEmpty() && rows.stream().allMatch(r -> r.wrong().isEmpty());
    return good ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private Row row(DrillMaker maker, int number, KeptDrill kept) {
    Optional<String> cause = Optional.empty();
    Optional<String> wrong = Optional.empty();
    try {
      String id = maker.drill(file, kept).hiddenCause().id();
      cause = hidden ? Optional.of(id) : Optional.empty();
    } catch (Failure failure) {
      wrong = Optional.of(failure.getMessage());
    }
    return new Row(
        number, kept.order().symptom(), kept.order().boat(), kept.order().seed(), cause, wrong);
  }

  private void print(Row row) {
    session
        .out()
        .println(
            row.number()
                + "  "
                + row.symptom()
                + ", "
                + row.boat()
                + row.cause().map(cause -> ": " + cause).orElse("")
                + row.wrong().map(wrong -> "  CANNOT BE PLAYED: " + wrong).orElse(""));
  }
}
