package limberboard.drill.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the students of a class have played, gathered. Two students of one name are told apart by
 * their keys; the same drill played by the same student in the same steps counts once.
 *
 * @param played everything that was handed in, in order
 */
public record ClassResults(List<Played> played) {
  /** Copies the list. */
  public ClassResults {
    played = List.copyOf(played);
  }

  /**
   * A drill that was handed in.
   *
   * @param student the student's name or number; empty when nobody is named
   * @param key tells two of one name apart; empty when it is not known
   * @param record what it came to
   * @param seed of the drill
   * @param steps what was done
   */
  public record Played(
      String student, String key, DrillRecord record, long seed, List<String> steps) {
    /** Copies the list. */
    public Played {
      steps = List.copyOf(steps);
    }

    private List<Object> same() {
      return List.of(student, key, record.symptom(), record.boat(), seed, steps);
    }
  }

  private record Who(String student, String key) {}

  /** How many were handed in more than once. */
  public int twice() {
    Set<List<Object>> once = new LinkedHashSet<>();
    played.forEach(each -> once.add(each.same()));
    return played.size() - once.size();
  }

  /** Names that several students have. */
  public Set<String> sharedNames() {
    Map<String, Set<String>> keys = new LinkedHashMap<>();
    played.forEach(
        each -> keys.computeIfAbsent(each.student(), name -> new TreeSet<>()).add(each.key()));
    Set<String> shared = new TreeSet<>();
    keys.forEach(
        (name, all) -> {
          if (all.size() > 1) {
            shared.add(name);
          }
        });
    return shared;
  }

  /** Each student with what was played; those who share a name have their keys behind it. */
  public List<Progress> students() {
    Set<String> shared = sharedNames();
    Map<Who, Map<List<Object>, DrillRecord>> all = new LinkedHashMap<>();
    for (Played each : played) {
      all.computeIfAbsent(new Who(each.student(), each.key()), who -> new LinkedHashMap<>())
          .putIfAbsent(each.same(), each.record());
    }
    List<Progress> students = new ArrayList<>();
    all.forEach(
        (who, drills) -> {
          String name = who.student().isEmpty() ? "(nobody named)" : who.student();
          String told = who.key().isEmpty() ? "no key" : who.key();
          students.add(
              new Progress(
                  shared.contains(who.student()) ? name + " (" + told + ")" : name,
                  List.copyOf(drills.values())));
        });
    return students;
  }

  /** The class as a whole. */
  public Progress all() {
    return new Progress("", students().stream().flatMap(each -> each.drills().stream()).toList());
  }
}
