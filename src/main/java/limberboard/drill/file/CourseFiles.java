package limberboard.drill.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.file.TextFile;
import limberboard.library.header.HeaderBinder;
import limberboard.library.problem.Problem;

/** Reads and writes courses: drills in order, one file each. Stateless. */
public final class CourseFiles {
  private final HeaderBinder binder = new HeaderBinder();

  /** Makes it. */
  public CourseFiles() {}

  /**
   * A course.
   *
   * @param title what it is called
   * @param drills its drills, in order
   */
  public record Course(String title, List<KeptDrill> drills) {
    /** Copies the list. */
    public Course {
      drills = List.copyOf(drills);
    }
  }

  /**
   * What came of reading.
   *
   * @param course the course with the drills that can be used, if there is one
   * @param problems what is wrong
   */
  public record Read(Optional<Course> course, List<Problem> problems) {
    /** Copies the list. */
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** Reads a file. */
  public Read read(Path file) {
    TextFile.Result text = TextFile.read(file, file.toString());
    return text.problems().isEmpty()
        ? read(file.toString(), text.text())
        : new Read(Optional.empty(), text.problems());
  }

  /**
   * Reads the text of a file.
   *
   * @param name what problems call it
   */
  public Read read(String name, String text) {
    HeaderBinder.Bound<CourseEntry> bound = binder.read(name, text, CourseEntry.class);
    List<Problem> problems = new ArrayList<>(bound.problems());
    if (bound.value().isEmpty()) {
      return new Read(Optional.empty(), problems);
    }
    List<KeptDrill> drills = new ArrayList<>();
    for (int i = 0; i < bound.value().get().drills().size(); i++) {
      try {
        drills.add(bound.value().get().drills().get(i).kept());
      } catch (IllegalArgumentException e) {
        String key = "drills." + i;
        problems.add(
            Problem.error(
                name, bound.line(key), key, e.getMessage(), "put it right; the others are kept"));
      }
    }
    return new Read(Optional.of(new Course(bound.value().get().title(), drills)), problems);
  }

  /** The text of a course's file. */
  public String text(Course course) {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("title", course.title());
    keys.put("drills", course.drills().stream().map(each -> DrillEntry.of(each).keys()).toList());
    return WrittenYaml.of(keys);
  }
}
