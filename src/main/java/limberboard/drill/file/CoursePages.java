package limberboard.drill.file;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.drill.HiddenNumber;
import limberboard.drill.file.CourseLesson.Wrong;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.KeyLines;
import limberboard.library.page.Cause;
import limberboard.library.page.Course;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.trace.Fault;

/**
 * The courses that are pages of the library, made ready to be played on a day. Immutable; making
 * drills takes some time, so it is nothing for the event thread.
 *
 * @param workspace the workspace
 * @param on the day they are played on
 */
public record CoursePages(Workspace workspace, LocalDate on) {

  /** The pages, by id. */
  public List<Page<Course>> pages() {
    return workspace.library().all(Course.class);
  }

  /** The course page with this id. */
  public Optional<Page<Course>> page(String id) {
    return workspace.library().page(id).flatMap(page -> page.as(Course.class));
  }

  /** The drills of a page in its order, those that cannot be played here too. */
  public List<CourseLesson> lessons(Page<Course> page) {
    List<CourseLesson> lessons = new ArrayList<>();
    for (Course.Lesson asked : page.details().drills()) {
      lessons.add(lesson(lessons.size() + 1, asked));
    }
    return lessons;
  }

  /** The page as a course that students can be given: its drills that can be played here. */
  public CourseFiles.Course course(Page<Course> page) {
    List<KeptDrill> kept =
        lessons(page).stream()
            .flatMap(lesson -> lesson.drill().stream())
            .map(CoursePages::kept)
            .toList();
    return new CourseFiles.Course(page.title(), kept);
  }

  /** A drill as a file keeps it before anybody has played it. */
  public static KeptDrill kept(Drill drill) {
    return new KeptDrill(
        drill.order(), drill.stamp(), Optional.empty(), Optional.empty(), List.of());
  }

  /**
   * What is wrong with the pages that the library cannot see: boats that are not there, and hidden
   * causes that they cannot have.
   *
   * @param folders where the pages lie, for the lines
   */
  public List<Problem> problems(WorkspaceFolders folders) {
    List<Problem> problems = new ArrayList<>();
    for (Page<Course> page : pages()) {
      List<Wrong> wrong =
          lessons(page).stream()
              .filter(each -> workspace.library().symptom(each.asked().symptom()).isPresent())
              .flatMap(lesson -> lesson.wrong().stream())
              .toList();
      if (!wrong.isEmpty()) {
        KeyLines lines = KeyLines.of(folders, page);
        wrong.forEach(
            each -> problems.add(lines.error(each.pointer(), each.wrong(), each.right())));
      }
    }
    return problems;
  }

  private CourseLesson lesson(int number, Course.Lesson asked) {
    String pointer = "/drills/" + (number - 1);
    Optional<Page<Symptom>> symptom = workspace.library().symptom(asked.symptom());
    Optional<Boat> boat = workspace.boat(asked.boat());
    if (symptom.isEmpty()) {
      List<String> ids = workspace.library().all(Symptom.class).stream().map(Page::id).toList();
      return cannot(
          number,
          asked,
          new Wrong(
              pointer + "/symptom",
              "there is no symptom \"" + asked.symptom() + "\"",
              Nearest.advice(asked.symptom(), ids, "name a page of articles/symptoms")));
    } else if (boat.isEmpty()) {
      List<String> ids = workspace.boats().stream().map(Boat::id).toList();
      return cannot(
          number,
          asked,
          new Wrong(
              pointer + "/boat",
              "there is no boat \"" + asked.boat() + "\"",
              Nearest.advice(
                  asked.boat(),
                  ids,
                  "name a boat's folder, or a model and a year: a tarnwick-30 of 2017")));
    }
    return lesson(number, asked, symptom.get(), new Fitting(boat.get(), on));
  }

  private CourseLesson lesson(
      int number, Course.Lesson asked, Page<Symptom> symptom, Fitting fitting) {
    String pointer = "/drills/" + (number - 1);
    Fit fit = fitting.judge(symptom.head().fits());
    if (!fit.fits()) {
      return cannot(
          number,
          asked,
          new Wrong(
              pointer + "/boat",
              symptom.id() + " is not for " + fitting.boat().name() + ": " + fit.reason(),
              "name a boat that the symptom is for"));
    }
    Fault fault = Fault.of(symptom, fitting, workspace.library(), workspace.cases());
    DrillOrder order =
        new DrillOrder(asked.symptom(), fitting.boat().id(), on, asked.seed(), 0, asked.hides());
    try {
      return new CourseLesson(number, asked, Optional.of(Drill.of(order, fault)), Optional.empty());
    } catch (IllegalArgumentException e) {
      return cannot(number, asked, hidden(pointer, asked, symptom, fitting.boat()));
    }
  }

  /** Why the hidden cause is none; the cause is not named, since anybody may validate. */
  private static Wrong hidden(
      String pointer, Course.Lesson asked, Page<Symptom> symptom, Boat boat) {
    int number = asked.hides().orElseThrow();
    List<String> ids = symptom.details().causes().stream().map(Cause::id).toList();
    boolean known = HiddenNumber.cause(number, asked.symptom(), asked.seed(), ids).isPresent();
    return new Wrong(
        pointer + "/hides",
        known
            ? number + " hides a cause of " + symptom.id() + " that " + boat.name() + " cannot have"
            : number + " hides no cause of " + symptom.id() + " with the seed " + asked.seed(),
        "limberboard course line "
            + symptom.id()
            + " --boat \""
            + asked.boat()
            + "\" --cause CAUSE --seed "
            + asked.seed()
            + " writes the number of a cause she can have");
  }

  private static CourseLesson cannot(int number, Course.Lesson asked, Wrong wrong) {
    return new CourseLesson(number, asked, Optional.empty(), Optional.of(wrong));
  }
}
