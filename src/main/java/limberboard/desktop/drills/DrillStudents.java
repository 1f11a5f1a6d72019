package limberboard.desktop.drills;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.drill.DrillRun;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.StudentFiles;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.learn.NextDrill;
import limberboard.drill.learn.Progress;
import limberboard.drill.mark.DrillMark;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/**
 * The students of the workspace, who are never shared, and results as files. Reading and writing
 * happen in the background. For the event thread only.
 */
final class DrillStudents extends Observed {
  private final Session session;
  private final StudentFiles files;
  private final Background background;
  private final Notices notices;
  private final Guard guard;
  private List<Progress> known = List.of();
  private List<String> wrong = List.of();
  private Optional<String> key = Optional.empty();

  /** What the rule proposes, and what is wrong in the student's file. */
  private record Proposed(Optional<NextDrill.Chosen> chosen, List<Problem> problems) {}

  /**
   * Students, none read yet.
   *
   * @param session tells the workspace and the day
   * @param folders the workspace
   * @param background reads and writes
   * @param notices is told what was written and what is wrong
   * @param guard is told of work that must not run on the event thread
   */
  DrillStudents(
      Session session,
      WorkspaceFolders folders,
      Background background,
      Notices notices,
      Guard guard) {
    this.session = session;
    this.files = new StudentFiles(folders);
    this.background = background;
    this.notices = notices;
    this.guard = guard;
  }

  /** Those who have been drilled here, as last read. */
  List<Progress> known() {
    return known;
  }

  /** What is wrong in their files: file, line, and what would be right. */
  List<String> wrong() {
    return wrong;
  }

  /** One of them by name. */
  Optional<Progress> known(String name) {
    return known.stream().filter(each -> each.student().equals(name)).findFirst();
  }

  /** Reads them again. */
  void look() {
    background.run("Reading the students", this::readAll, this::take);
  }

  private List<StudentFiles.Read> readAll() {
    guard.begins("reading students");
    return files.all();
  }

  private void take(List<StudentFiles.Read> read) {
    List<Progress> found = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (StudentFiles.Read each : read) {
      each.student().map(StudentFiles.Student::progress).ifPresent(found::add);
      each.problems().stream().map(Problem::toString).forEach(problems::add);
    }
    known = List.copyOf(found);
    wrong = List.copyOf(problems);
    tell();
  }

  /** Proposes the next drill for a student, by the rule; what is wrong is said. */
  void propose(String name, DrillChoice choice) {
    WorkspaceDrills drills = new WorkspaceDrills(session.workspace(), session.today());
    background.run(
        "Choosing the next drill",
        () -> {
          guard.begins("choosing a drill");
          StudentFiles.Read read = files.read(name);
          Progress progress =
              read.student()
                  .map(StudentFiles.Student::progress)
                  .orElseGet(() -> new Progress(name, List.of()));
          return new Proposed(
              new NextDrill(progress, drills.can(), drills.today()).chosen(), read.problems());
        },
        proposed -> take(proposed, choice));
  }

  private void take(Proposed proposed, DrillChoice choice) {
    if (!proposed.problems().isEmpty()) {
      notices.warn("No drill is proposed: " + proposed.problems().get(0));
      return;
    }
    proposed
        .chosen()
        .ifPresentOrElse(
            next -> choice.propose(next.what().symptom(), next.what().boat(), next.why()),
            () -> notices.warn("There is no symptom and boat to drill."));
  }

  /** Keeps what a drill came to for its student. */
  void keep(String name, DrillMark mark) {
    DrillRecord record = DrillRecord.of(mark, session.today());
    long seed = mark.run().drill().order().seed();
    key = Optional.empty();
    background.run(
        "Writing what " + name + " has drilled",
        () -> {
          guard.begins("writing a student");
          return files.add(name, record, seed);
        },
        this::kept);
  }

  private void kept(StudentFiles.Read read) {
    key = read.student().map(StudentFiles.Student::key);
    if (read.problems().isEmpty()) {
      look();
    } else {
      notices.warn("Not kept for the student: " + read.problems().get(0));
    }
  }

  /** Asks for a file and writes what was played into it, for a trainer to gather. */
  void save(DrillRun run, Optional<String> student, Function<String, Optional<Path>> askFile) {
    askFile.apply(StepOffers.fileName(run, student)).ifPresent(file -> save(run, student, file));
  }

  private void save(DrillRun run, Optional<String> student, Path file) {
    Optional<String> its = student.flatMap(name -> key);
    String text = new DrillFiles().text(WorkspaceDrills.kept(run, student, its));
    background.run(
        "Writing the result",
        () -> {
          guard.begins("writing a result");
          SafeFiles.write(file, text);
          return file;
        },
        written -> notices.tell("The result is in " + written + "."));
  }
}
