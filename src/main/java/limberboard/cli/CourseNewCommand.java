package limberboard.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.file.CourseFiles;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.file.CoursePages;
import limberboard.drill.learn.CourseProposal;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code course new}: proposes a course. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = {
      "Proposes a course of drills: the symptoms in turn, each time on the next boat they fit,"
          + " hiding the likeliest cause that the course does not cover yet.",
      "With --from it writes the drills of a course page, all as they are on this day.",
      "The file says nothing of what is hidden. Take lines out of it, or put them in another order."
    })
final class CourseNewCommand implements Callable<Integer> {
  private static final int MOST = 500;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "SYMPTOM",
      arity = "0..*",
      description = "The symptoms it covers; all if none is named.")
  private List<String> symptoms = List.of();

  @Option(names = "--drills", paramLabel = "N", description = "How many drills, 1 to 500.")
  private Optional<Integer> drills = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "PAGE",
      description = "Write the drills of this course page instead of a proposal.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What chance comes from, a whole number from 0; 0 if not given.")
  private long seed;

  @Option(names = "--title", paramLabel = "TEXT", description = "What it is called.")
  private Optional<String> title = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "FILE",
      required = true,
      description = "The file to write, ending in .yaml.")
  private Path to;

  CourseNewCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (from.isPresent() == drills.isPresent() || from.isPresent() && !symptoms.isEmpty()) {
      throw new Failure(
          ExitCode.USAGE, "say how many with --drills N, or name a course page with --from PAGE");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    CourseFiles.Course course = from.isPresent() ? ofPage(read) : proposed(read);
    new OutFiles(session, folders, false).text(to, new CourseFiles().text(course));
    return ExitCode.OK;
  }

  private CourseFiles.Course ofPage(Workspace read) {
    CourseSource source = new CourseSource(session, read);
    Page<Course> page = source.page(from.get());
    for (CourseLesson lesson : source.pages().lessons(page)) {
      lesson
          .wrong()
          .ifPresent(
              wrong -> {
                throw new Failure(
                    ExitCode.NOT_FOUND,
                    "drill " + lesson.number() + ": " + wrong.wrong() + "; " + wrong.right());
              });
    }
    CourseFiles.Course course = source.pages().course(page);
    return new CourseFiles.Course(title.orElse(course.title()), course.drills());
  }

  private CourseFiles.Course proposed(Workspace read) {
    int many = drills.orElseThrow();
    if (many < 1 || many > MOST || seed < 0) {
      throw new Failure(
          ExitCode.USAGE, "--drills is a number from 1 to " + MOST + ", and --seed one from 0");
    }
    List<Drill> proposed = new CourseProposal(faults(read), seed).drills(many);
    if (proposed.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "no symptom and boat to make a course of");
    }
    return new CourseFiles.Course(
        title.orElse("Finding faults"), proposed.stream().map(CoursePages::kept).toList());
  }

  private List<Fault> faults(Workspace read) {
    TraceMaker maker = new TraceMaker(session, read);
    List<Page<Symptom>> pages =
        symptoms.isEmpty()
            ? read.library().all(Symptom.class)
            : symptoms.stream().map(maker::symptom).toList();
    SymptomsOnBoats all = new SymptomsOnBoats(session, read);
    return all.of(pages).map(all::fault).toList();
  }
}
