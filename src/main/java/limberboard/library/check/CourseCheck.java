package limberboard.library.check;

import limberboard.library.page.Course;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.problem.Report;

/** Checks courses: their symptoms, and whether their drills go into their hours. */
final class CourseCheck implements PageCheck<Course> {
  @Override
  public void check(Page<Course> page, KnownNames names, Report report) {
    Course course = page.details();
    if (course.drills().isEmpty()) {
      report.error("/drills", "is empty", "write at least one drill");
    }
    boolean hours = course.hours() > 0 && course.hours() <= Course.MOST_HOURS;
    if (!hours) {
      report.error(
          "/hours",
          "is not more than 0 and at most " + Course.MOST_HOURS,
          "write how long it takes with its breaks, such as 6");
    } else if (course.otherMinutes() < 0) {
      report.error(
          "/hours",
          "is too short: the drills alone take " + course.drillMinutes() + " minutes",
          "write the hours with the breaks, or leave drills out");
    }
    for (int i = 0; i < course.drills().size(); i++) {
      Course.Lesson drill = course.drills().get(i);
      String pointer = "/drills/" + i;
      names.page(Kind.SYMPTOM, drill.symptom(), pointer + "/symptom", report);
      if (drill.teach().before().isEmpty() && drill.teach().after().isEmpty()) {
        report.error(
            pointer + "/teach",
            "is empty",
            "write before, after or both: what the trainer says, a paragraph each");
      }
    }
  }
}
