package limberboard.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Check;
import limberboard.library.page.Symptom;

/**
 * The recorded cases of a symptom that teach something about one boat: those whose cause is proven
 * and is one that this boat can have, each with how much it counts. Immutable.
 *
 * @param cases the cases with their weights
 */
public record CountedCases(List<Counted> cases) {
  /** Copies the list. */
  public CountedCases {
    cases = List.copyOf(cases);
  }

  /**
   * A case that counts.
   *
   * @param recorded the case
   * @param cause its proven cause
   * @param weight how much it counts, more than 0, at most 1
   */
  public record Counted(RecordedCase recorded, String cause, double weight) {}

  /**
   * Those of a symptom that count for a boat.
   *
   * @param symptom symptom id
   * @param causes ids of the causes that the boat can have; something else is always one
   * @param fitting the boat and the day
   * @param all cases of any symptom and boat
   */
  public static CountedCases of(
      String symptom, Set<String> causes, Fitting fitting, List<RecordedCase> all) {
    List<Counted> counted = new ArrayList<>();
    for (RecordedCase recorded : all) {
      if (recorded.symptom().equals(symptom)) {
        recorded
            .provenCause()
            .filter(cause -> causes.contains(cause) || cause.equals(Symptom.SOMETHING_ELSE))
            .ifPresent(
                cause ->
                    counted.add(new Counted(recorded, cause, CaseWeights.of(recorded, fitting))));
      }
    }
    return new CountedCases(counted);
  }

  /** How many cases count, each as one. */
  public int number() {
    return cases.size();
  }

  /** How many cases have this cause, each as one. */
  public int number(String cause) {
    return (int) cases.stream().filter(each -> each.cause().equals(cause)).count();
  }

  /** How many cases of the same boat all are worth together. */
  public double worth() {
    return cases.stream().mapToDouble(Counted::weight).sum();
  }

  /** The causes' shares with these cases, from the workshop's estimate of them, in order. */
  public double[] causes(List<String> ids, double[] estimate) {
    double[] counts = new double[ids.size()];
    for (Counted each : cases) {
      int at = ids.indexOf(each.cause());
      if (at >= 0) {
        counts[at] += each.weight();
      }
    }
    return Dirichlet.mean(estimate, CaseWeights.CAUSES_WORTH, counts);
  }

  /**
   * The answers' shares under a cause with these cases, from the page's estimate of them.
   *
   * @param check the check
   * @param cause the cause's id; of something else nothing is learnt, because the next time it is
   *     another thing
   */
  public double[] answers(Check check, String cause, double[] estimate) {
    if (cause.equals(Symptom.SOMETHING_ELSE)) {
      return estimate.clone();
    }
    double[] counts = new double[estimate.length];
    for (Counted each : cases) {
      if (each.cause().equals(cause)) {
        String answer = each.recorded().answers().getOrDefault(check.id(), "");
        int at = check.answers().indexOf(answer);
        if (at >= 0) {
          counts[at] += each.weight();
        }
      }
    }
    return Dirichlet.mean(estimate, CaseWeights.ANSWERS_WORTH, counts);
  }

  /** In how many cases of a cause that has a name a check was answered. */
  public int answered(Check check) {
    return (int)
        cases.stream()
            .filter(each -> !each.cause().equals(Symptom.SOMETHING_ELSE))
            .filter(
                each ->
                    check
                        .answers()
                        .contains(each.recorded().answers().getOrDefault(check.id(), "")))
            .count();
  }
}
