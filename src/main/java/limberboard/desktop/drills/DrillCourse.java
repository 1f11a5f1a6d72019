package limberboard.desktop.drills;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Guard;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.drill.Drill;
import limberboard.drill.file.CourseFiles;
import limberboard.drill.file.CourseLesson;
import limberboard.drill.file.CoursePages;
import limberboard.drill.file.KeptDrill;
import limberboard.drill.file.WorkspaceDrills;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.problem.Problem;

/** A course that was opened: its drills in order. For the event thread only. */
final class DrillCourse extends Observed {
  private final Session session;
  private final Latest latest;
  private final Guard guard;
  private Optional<Opened> opened = Optional.empty();
  private final Set<Integer> played = new HashSet<>();
  private int at = -1;

  /**
   * A course that was read.
   *
   * @param title what it is called
   * @param lines its drills, in order
   * @param problems what is wrong in its file
   */
  record Opened(String title, List<Line> lines, List<String> problems) {}

  /**
   * A drill of the course.
   *
   * @param number its number, from 1
   * @param title symptom and boat
   * @param kept the drill
   * @param wrong why it cannot be played here, or empty
   */
  record Line(int number, String title, KeptDrill kept, String wrong) {}

  DrillCourse(Session session, Background background, Guard guard) {
    this.session = session;
    this.latest = new Latest(background);
    this.guard = guard;
  }

  /** The course, once one has been read. */
  Optional<Opened> opened() {
    return opened;
  }

  /** Whether a drill of it has been played to its end. */
  boolean isPlayed(Line line) {
    return played.contains(line.number());
  }

  /** Reads a course's file. */
  void open(Path file) {
    WorkspaceDrills drills = drills();
    latest.run("Reading the course", () -> read(file, drills), this::take);
  }

  /** The courses that are pages of the library. */
  List<Page<Course>> ready() {
    return pages().pages();
  }

  /** Reads a course that is a page. */
  void open(Page<Course> page) {
    CoursePages pages = pages();
    latest.run("Reading the course", () -> read(page, pages), this::take);
  }

  private Opened read(Page<Course> page, CoursePages pages) {
    guard.begins("reading a course");
    List<Line> lines = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (CourseLesson lesson : pages.lessons(page)) {
      lesson
          .drill()
          .ifPresent(
              drill ->
                  lines.add(new Line(lines.size() + 1, title(drill), CoursePages.kept(drill), "")));
      lesson.wrong().stream()
          .map(wrong -> "Drill " + lesson.number() + " is left out: " + wrong.wrong() + ".")
          .forEach(problems::add);
    }
    return new Opened(page.title(), lines, problems);
  }

  private CoursePages pages() {
    return new CoursePages(session.workspace(), session.today());
  }

  private Opened read(Path file, WorkspaceDrills drills) {
    guard.begins("reading a course");
    CourseFiles.Read read = new CourseFiles().read(file);
    List<Line> lines = new ArrayList<>();
    for (KeptDrill kept : read.course().map(CourseFiles.Course::drills).orElse(List.of())) {
      lines.add(line(lines.size() + 1, kept, drills));
    }
    String title =
        read.course()
            .map(CourseFiles.Course::title)
            .orElse(file.getFileName() + " is no course that can be read");
    return new Opened(title, lines, read.problems().stream().map(Problem::toString).toList());
  }

  private static Line line(int number, KeptDrill kept, WorkspaceDrills drills) {
    try {
      Drill drill = drills.drill(kept);
      return new Line(number, title(drill), kept, "");
    } catch (IllegalArgumentException e) {
      String plain = kept.order().symptom() + ", " + kept.order().boat();
      return new Line(number, plain, kept, e.getMessage());
    }
  }

  /** Symptom and boat of a drill. */
  static String title(Drill drill) {
    return drill.fault().page().title() + ", " + drill.fault().fitting().boat().name();
  }

  private void take(Opened now) {
    opened = Optional.of(now);
    played.clear();
    at = -1;
    tell();
  }

  private WorkspaceDrills drills() {
    return new WorkspaceDrills(session.workspace(), session.today());
  }

  /** Begins one of its drills. */
  void begin(Line line, Optional<String> student, DrillModel model) {
    at = line.number();
    WorkspaceDrills drills = drills();
    model.begin(student.or(line.kept()::student), () -> drills.drill(line.kept()));
    tell();
  }

  /** The drill that is played is none of the course. */
  void leave() {
    at = -1;
  }

  /** The drill that was begun last has been played to its end. */
  void ended() {
    if (at > 0) {
      played.add(at);
      tell();
    }
  }

  /** The drill that comes next and can be played, if there is one. */
  Optional<Line> next() {
    return opened.stream()
        .flatMap(course -> course.lines().stream())
        .filter(line -> line.number() > at && line.wrong().isEmpty() && !isPlayed(line))
        .findFirst();
  }
}
