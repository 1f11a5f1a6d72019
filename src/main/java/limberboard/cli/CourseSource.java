package limberboard.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.file.CourseFiles;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.file.CoursePages;
import limberboard.drill.file.DrillFiles;
import limberboard.drill.file.KeptDrill;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;

/**
 * Courses as commands are given them: a file, whose name ends in .yaml, or a page's id.
 *
 * @param session where the command runs
 * @param workspace the workspace
 */
record CourseSource(CommandContext session, Workspace workspace) {

  /**
   * A drill of a course.
   *
   * @param number from 1
   * @param symptom what it was to be of
   * @param boat on which boat
   * @param seed what chance comes from
   * @param minutes of class; only where a page says it
   * @param drill the drill, if it can be played here
   * @param wrong why it cannot
   */
  record Numbered(
      int number,
      String symptom,
      String boat,
      long seed,
      Optional<Integer> minutes,
      Optional<Drill> drill,
      Optional<String> wrong) {}

  /** A course with all its drills. */
  record Whole(String title, List<Numbered> drills, List<Problem> problems) {}

  /** Whether what was given is a file. */
  static boolean isFile(String asked) {
    return asked.endsWith(DrillFiles.ENDING);
  }

  /** The course pages on the session's day. */
  CoursePages pages() {
    return new CoursePages(workspace, session.today());
  }

  /** The course page with this id. */
  Page<Course> page(String id) {
    return pages()
        .page(id)
        .orElseThrow(
            () -> {
              List<String> ids = pages().pages().stream().map(Page::id).toList();
              return Failure.unknown(
                  "course page",
                  id,
                  ids,
                  ids.isEmpty()
                      ? "there are none; a course's file ends in .yaml"
                      : "there are " + String.join(", ", ids));
            });
  }

  /** A course, with what is wrong in its file said. */
  Whole whole(String asked) {
    if (!isFile(asked)) {
      Page<Course> page = page(asked);
      return new Whole(
          page.title(),
          pages().lessons(page).stream().map(CourseSource::numbered).toList(),
          List.of());
    }
    CourseFiles.Read read = file(asked);
    CourseFiles.Course course = read.course().orElseThrow();
    List<Numbered> drills = new ArrayList<>();
    for (KeptDrill kept : course.drills()) {
      drills.add(numbered(asked, drills.size() + 1, kept));
    }
    return new Whole(course.title(), drills, read.problems());
  }

  private CourseFiles.Read file(String asked) {
    CourseFiles.Read read = new CourseFiles().read(session.folder().resolve(asked));
    read.problems().forEach(problem -> session.err().println(problem));
    if (read.course().isEmpty()) {
      throw new Failure(ExitCode.NOT_FOUND, asked + " is no course that can be read");
    }
    return read;
  }

  private static Numbered numbered(CourseLesson lesson) {
    return new Numbered(
        lesson.number(),
        lesson.asked().symptom(),
        lesson.asked().boat(),
        lesson.asked().seed(),
        Optional.of(lesson.asked().minutes()),
        lesson.drill(),
        lesson.wrong().map(wrong -> wrong.wrong() + "; " + wrong.right()));
  }

  private Numbered numbered(String file, int number, KeptDrill kept) {
    Optional<Drill> drill = Optional.empty();
    Optional<String> wrong = Optional.empty();
    try {
      drill = Optional.of(new DrillMaker(session, workspace).drill(Path.of(file), kept));
    } catch (Failure failure) {
      wrong = Optional.of(failure.getMessage());
    }
    DrillOrder order = kept.order();
    return new Numbered(
        number, order.symptom(), order.boat(), order.seed(), Optional.empty(), drill, wrong);
  }

  /**
   * The drill of this number.
   *
   * @param hints how many hints a page's drill allows; a file says it itself
   */
  Drill drill(String asked, int number, int hints) {
    List<Numbered> drills = whole(asked).drills();
    if (number < 1 || number > drills.size()) {
      throw new Failure(
          ExitCode.NOT_FOUND,
          asked
              + " has the drills 1 to "
              + drills.size()
              + (number == 0 ? "; say which with --number" : ", and none of number " + number));
    }
    Numbered found = drills.get(number - 1);
    Drill drill =
        found
            .drill()
            .orElseThrow(() -> new Failure(ExitCode.NOT_FOUND, found.wrong().orElse(asked)));
    return isFile(asked) ? drill : with(drill, hints);
  }

  private static Drill with(Drill drill, int hints) {
    DrillOrder order = drill.order();
    try {
      return Drill.of(
          new DrillOrder(
              order.symptom(), order.boat(), order.on(), order.seed(), hints, order.hides()),
          drill.fault());
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.USAGE, e.getMessage());
    }
  }
}
