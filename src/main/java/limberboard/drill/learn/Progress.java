package limberboard.drill.learn;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.MistakeKind;

/**
 * What one student has drilled, and where it costs.
 *
 * @param student a name or a number
 * @param drills what was played, the earliest first
 */
public record Progress(String student, List<DrillRecord> drills) {
  private static final double BEFORE_ANY = 0.2;
  private static final double WORTH = 2;
  private static final double OLDER = 0.5;

  /** Sorts and copies the list. */
  public Progress {
    drills = drills.stream().sorted(Comparator.comparing(DrillRecord::played)).toList();
  }

  /**
   * What drills of one kind came to.
   *
   * @param drills how many
   * @param regret their skill marks together, in minutes
   * @param dangers their dangers together
   */
  public record Cost(int drills, double regret, int dangers) {
    private Cost with(DrillRecord each) {
      return new Cost(drills + 1, regret + each.regret(), dangers + each.dangers());
    }
  }

  /** With a drill more. */
  public Progress with(DrillRecord more) {
    List<DrillRecord> all = new ArrayList<>(drills);
    all.add(more);
    return new Progress(student, all);
  }

  /** By symptom, the dearest first. */
  public Map<String, Cost> symptoms() {
    return by(DrillRecord::symptom);
  }

  /** By system, the dearest first; symptoms that are filed under none are left out. */
  public Map<String, Cost> systems() {
    Map<String, Cost> all = by(DrillRecord::system);
    all.remove("");
    return all;
  }

  private Map<String, Cost> by(Function<DrillRecord, String> key) {
    Map<String, Cost> costs = new LinkedHashMap<>();
    for (DrillRecord each : drills) {
      costs.put(key.apply(each), costs.getOrDefault(key.apply(each), new Cost(0, 0, 0)).with(each));
    }
    Map<String, Cost> sorted = new LinkedHashMap<>();
    costs.entrySet().stream()
        .sorted(Comparator.comparingDouble(entry -> -entry.getValue().regret()))
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return sorted;
  }

  /** What each kind of mistake cost in all, in minutes, the dearest first. */
  public Map<MistakeKind, Double> mistakes() {
    Map<MistakeKind, Double> all = new EnumMap<>(MistakeKind.class);
    drills.forEach(
        each -> each.mistakes().forEach((kind, cost) -> all.merge(kind, cost, Double::sum)));
    Map<MistakeKind, Double> sorted = new LinkedHashMap<>();
    all.entrySet().stream()
        .sorted(Map.Entry.<MistakeKind, Double>comparingByValue().reversed())
        .forEach(entry -> sorted.put(entry.getKey(), entry.getValue()));
    return sorted;
  }

  /** Everything that was said to be how sure of. */
  public List<Certainty> certainties() {
    return drills.stream().flatMap(each -> each.certainties().stream()).toList();
  }

  /** When a symptom comes back. */
  public RepeatRule repeat(String symptom, LocalDate today) {
    RepeatRule rule = RepeatRule.begin(today);
    for (DrillRecord each : drills) {
      if (each.symptom().equals(symptom)) {
        rule = rule.after(each.grade(), each.played());
      }
    }
    return rule;
  }

  /**
   * What a symptom is expected to cost the next time, against what the best plan comes to: the
   * shares of its drills, each older one counting half of the next, and two drills' worth of what
   * the symptom's system, or else all drills, come to on average; 0.2 before any drill. An
   * estimate: common practice, no source.
   */
  public double expectedShare(String symptom, String system) {
    double before = mean(DrillRecord::system, system, mean(each -> "", "", BEFORE_ANY));
    double sum = WORTH * before;
    double worth = WORTH;
    double counts = 1;
    for (int i = drills.size() - 1; i >= 0; i--) {
      if (drills.get(i).symptom().equals(symptom)) {
        sum += counts * drills.get(i).share();
        worth += counts;
        counts *= OLDER;
      }
    }
    return sum / worth;
  }

  private double mean(Function<DrillRecord, String> key, String wanted, double otherwise) {
    return drills.stream()
        .filter(each -> key.apply(each).equals(wanted))
        .mapToDouble(DrillRecord::share)
        .average()
        .orElse(otherwise);
  }
}
