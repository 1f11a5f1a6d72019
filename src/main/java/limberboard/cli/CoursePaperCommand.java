package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.paper.CourseSheets;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code course paper}: a course page's sheets, for the students and for the trainer. */
@Command(
    name = "paper",
    mixinStandardHelpOptions = true,
    description = {
      "Makes the sheets of a course page: one a drill for the students, and the trainer's with what"
          + " to say before and after each drill, what is hidden, every answer and the best plan.",
      "Without --pdf and --key it prints the trainer's sheets as text."
    })
final class CoursePaperCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "PAGE", description = "The course page's id.")
  private String id;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the students' sheets as PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--key", paramLabel = "FILE", description = "Write the trainer's sheets as PDF.")
  private Optional<Path> key = Optional.empty();

  CoursePaperCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    CourseSource source = new CourseSource(session, read);
    Page<Course> page = source.page(id);
    List<CourseLesson> lessons = source.pages().lessons(page);
    CourseSheets sheets = new CourseSheets(page, lessons);
    OutFiles files = new OutFiles(session, folders, false);
    pdf.ifPresent(file -> files.bytes(file, students(sheets, folders)));
    key.ifPresent(file -> files.pdf(file, sheets.trainer()));
    if (pdf.isEmpty() && key.isEmpty()) {
      session.out().println(new PlainText().render(sheets.trainer(), WIDTH));
    }
    boolean good = true;
    for (CourseLesson lesson : lessons) {
      if (lesson.wrong().isPresent()) {
        good = false;
        session
            .err()
            .println("drill " + lesson.number() + " is left out: " + lesson.wrong().get().wrong());
      }
    }
    return good ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private byte[] students(CourseSheets sheets, WorkspaceFolders folders) {
    List<CutPage> students = sheets.students();
    if (students.isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, "no drill of " + id + " can be played here");
    }
    try {
      return new Pdf(Pictures.in(folders)).of(students);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the sheets cannot be laid out as PDF: " + e.getMessage());
    }
  }
}
