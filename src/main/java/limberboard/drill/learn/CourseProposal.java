package limberboard.drill.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import limberboard.drill.Drill;
import limberboard.drill.DrillOrder;
import limberboard.trace.Fault;
import limberboard.trace.FaultCause;

/**
 * Proposes a course: symptom by symptom in turn, each time on the next of its boats, hiding the
 * likeliest cause that the course does not cover yet; when a symptom's causes are covered, the
 * likeliest again.
 *
 * @param faults what can be drilled, symptom by symptom, each on the boats it fits
 * @param seed what chance comes from, 0 or more
 */
public record CourseProposal(List<Fault> faults, long seed) {
  /** Copies the list. */
  public CourseProposal {
    faults = List.copyOf(faults);
  }

  /** So many drills, in order; none where nothing can be drilled. */
  public List<Drill> drills(int count) {
    List<String> symptoms = faults.stream().map(each -> each.page().id()).distinct().toList();
    Map<String, Set<String>> covered = new HashMap<>();
    List<Drill> drills = new ArrayList<>();
    for (int i = 0; drills.size() < count && !symptoms.isEmpty(); i++) {
      String symptom = symptoms.get(i % symptoms.size());
      List<Fault> boats = faults.stream().filter(each -> each.page().id().equals(symptom)).toList();
      Fault fault = boats.get(i / symptoms.size() % boats.size());
      Set<String> known = covered.computeIfAbsent(symptom, id -> new HashSet<>());
      drills.add(drill(fault, known, seed + i));
      known.add(drills.get(drills.size() - 1).hiddenCause().id());
    }
    return drills;
  }

  private static Drill drill(Fault fault, Set<String> covered, long from) {
    List<FaultCause> likeliest =
        fault.causes().stream()
            .filter(cause -> !cause.isSomethingElse())
            .sorted(
                Comparator.comparing((FaultCause cause) -> covered.contains(cause.id()))
                    .thenComparing(Comparator.comparingDouble(FaultCause::prior).reversed()))
            .toList();
    long seed = from;
    for (FaultCause cause : likeliest) {
      OptionalLong draws = Drill.seedFor(fault, cause.id(), from);
      if (draws.isPresent()) {
        seed = draws.getAsLong();
        break;
      }
    }
    return Drill.of(
        new DrillOrder(
            fault.page().id(), fault.fitting().boat().id(), fault.fitting().on(), seed, 0),
        fault);
  }
}
