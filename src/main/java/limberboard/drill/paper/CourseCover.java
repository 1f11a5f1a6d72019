package limberboard.drill.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import limberboard.drill.Drill;
import limberboard.trace.FaultCause;

/** What a course covers: of each symptom the causes that its drills hide. For the trainer. */
public final class CourseCover {
  private CourseCover() {}

  /**
   * A symptom of the course.
   *
   * @param symptom its title
   * @param hidden titles of the causes that the course hides, each once
   * @param all how many causes its page has
   */
  public record Covered(String symptom, List<String> hidden, int all) {
    /** Copies the list. */
    public Covered {
      hidden = List.copyOf(hidden);
    }
  }

  /** Each symptom of these drills, in their order. */
  public static List<Covered> of(List<Drill> drills) {
    Map<String, List<Drill>> bySymptom = new LinkedHashMap<>();
    for (Drill drill : drills) {
      bySymptom.computeIfAbsent(drill.fault().page().title(), none -> new ArrayList<>()).add(drill);
    }
    List<Covered> covered = new ArrayList<>();
    bySymptom.forEach((symptom, of) -> covered.add(covered(symptom, of)));
    return covered;
  }

  private static Covered covered(String symptom, List<Drill> drills) {
    List<String> hidden =
        drills.stream().map(Drill::hiddenCause).map(FaultCause::title).distinct().toList();
    return new Covered(symptom, hidden, drills.get(0).fault().page().details().causes().size());
  }
}
