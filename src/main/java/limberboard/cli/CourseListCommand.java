package limberboard.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.paper.CourseCover;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.words.Minutes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code course list}: which ready courses there are; what a course holds, and what of it cannot be
 * played here.
 */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    description = {
      "Lists the ready courses, which are pages of the library; of one of them, or of a course's"
          + " file, its drills with their numbers, and which cannot be played here and why.",
      "With --hidden also what is hidden, and which causes the course covers: for the trainer."
    })
final class CourseListCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "PAGE|FILE",
      arity = "0..1",
      description = "The course's page or file; all course pages if not given.")
  private Optional<String> course = Optional.empty();

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
      Optional<Integer> minutes,
      Optional<String> cause,
      Optional<String> wrong) {}

  /** The course; what it covers only with {@code --hidden}. */
  record View(
      String title, List<Row> drills, List<CourseCover.Covered> covers, List<String> problems) {}

  /** A course page as {@code --json} prints it. */
  record Ready(String id, String title, String learners, double hours, int drills) {
    static Ready of(Page<Course> page) {
      Course course = page.details();
      return new Ready(
          page.id(), page.title(), course.learners(), course.hours(), course.drills().size());
    }
  }

  @Override
  public Integer call() {
    Workspace read = session.workspace(session.folders(workspace.folder()));
    CourseSource source = new CourseSource(session, read);
    return course.isPresent() ? one(source.whole(course.get())) : all(source);
  }

  private int all(CourseSource source) {
    List<Ready> ready = source.pages().pages().stream().map(Ready::of).toList();
    if (json) {
      new JsonOutput(session.out()).print(ready);
      return ExitCode.OK;
    }
    for (Page<Course> page : source.pages().pages()) {
      Course course = page.details();
      session
          .out()
          .println(
              page.id()
                  + "  "
                  + page.title()
                  + ": "
                  + Minutes.words(course.drillMinutes() + course.otherMinutes())
                  + ", "
                  + CountWords.of(course.drills().size(), "drill")
                  + ", for "
                  + course.learners());
    }
    if (ready.isEmpty()) {
      session.out().println("No course pages; course new proposes a course.");
    }
    return ExitCode.OK;
  }

  private int one(CourseSource.Whole whole) {
    List<Row> rows = whole.drills().stream().map(this::row).toList();
    List<CourseCover.Covered> covers = hidden ? covers(whole) : List.of();
    if (json) {
      List<String> problems = whole.problems().stream().map(Object::toString).toList();
      new JsonOutput(session.out()).print(new View(whole.title(), rows, covers, problems));
    } else {
      session.out().println(whole.title());
      rows.forEach(this::print);
      covers.forEach(this::print);
    }
    boolean good = whole.problems().isEmpty() && rows.stream().allMatch(r -> r.wrong().isEmpty());
    return good ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private static List<CourseCover.Covered> covers(CourseSource.Whole whole) {
    return CourseCover.of(whole.drills().stream().flatMap(each -> each.drill().stream()).toList());
  }

  private Row row(CourseSource.Numbered each) {
    Optional<String> cause =
        each.drill().filter(drill -> hidden).map(drill -> drill.hiddenCause().id());
    return new Row(
        each.number(),
        each.symptom(),
        each.boat(),
        each.seed(),
        each.minutes(),
        cause,
        each.wrong());
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
                + row.minutes().map(minutes -> ", " + Minutes.words(minutes)).orElse("")
                + row.cause().map(cause -> ": " + cause).orElse("")
                + row.wrong().map(wrong -> "  CANNOT BE PLAYED: " + wrong).orElse(""));
  }

  private void print(CourseCover.Covered covered) {
    session
        .out()
        .println(
            "Covers of "
                + covered.symptom()
                + ": "
                + String.join("; ", covered.hidden())
                + " ("
                + covered.hidden().size()
                + " of "
                + CountWords.of(covered.all(), "cause")
                + ")");
  }
}
