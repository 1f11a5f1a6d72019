package limberboard.drill.file;

import java.util.Optional;
import limberboard.drill.Drill;
import limberboard.library.page.Course;

/**
 * A drill of a course page, as it can be played in one workspace.
 *
 * @param number from 1, as the page counts
 * @param asked what the page says of it
 * @param drill the drill; empty when it cannot be played here
 * @param wrong why it cannot
 */
public record CourseLesson(
    int number, Course.Lesson asked, Optional<Drill> drill, Optional<Wrong> wrong) {

  /**
   * Why a drill cannot be played.
   *
   * @param pointer the key of the page, as a JSON pointer
   * @param wrong what is wrong
   * @param right what would be right
   */
  public record Wrong(String pointer, String wrong, String right) {}
}
