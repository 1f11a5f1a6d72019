package limberboard.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.library.page.Check;
import limberboard.library.page.Symptom;
import limberboard.words.CountWords;
import limberboard.words.Sentences;

/**
 * Earlier cases of a symptom that are like the one that is being traced, the likest first.
 *
 * <p>A case is as like as its boat counts by {@link CaseWeights}, times what its answers say: twice
 * for each answer that is the same, half for each that is another. What was not asked in one of the
 * two says nothing. The later comes first of equally like ones.
 */
public final class SimilarCases {
  private static final double ANSWER = 2;

  private SimilarCases() {}

  /**
   * A case that is like another.
   *
   * @param recorded the earlier case
   * @param likeness greater than 0; 1 for the same boat without an answer in common
   * @param same ids of checks that were answered alike
   * @param different ids of checks that were answered otherwise
   * @param reason why it is like, in words
   */
  public record Similar(
      RecordedCase recorded,
      double likeness,
      List<String> same,
      List<String> different,
      String reason) {
    /** Copies the lists. */
    public Similar {
      same = List.copyOf(same);
      different = List.copyOf(different);
    }
  }

  /**
   * Finds them.
   *
   * @param symptom the symptom's id
   * @param details its checks, whose questions the reasons name
   * @param fitting the boat and the day
   * @param answers check id to answer, as far as it is traced
   * @param all cases of any symptom; open ones are left out
   */
  public static List<Similar> of(
      String symptom,
      Symptom details,
      Fitting fitting,
      Map<String, String> answers,
      List<RecordedCase> all) {
    return all.stream()
        .filter(recorded -> recorded.symptom().equals(symptom) && !recorded.isOpen())
        .map(recorded -> similar(recorded, details, fitting, answers))
        .sorted(
            Comparator.comparingDouble(Similar::likeness)
                .thenComparing(each -> each.recorded().date())
                .reversed()
                .thenComparing(each -> each.recorded().id()))
        .toList();
  }

  private static Similar similar(
      RecordedCase recorded, Symptom details, Fitting fitting, Map<String, String> answers) {
    List<String> same = new ArrayList<>();
    List<String> different = new ArrayList<>();
    for (Check check : details.checks()) {
      String theirs = recorded.answers().getOrDefault(check.id(), "");
      String mine = answers.getOrDefault(check.id(), "");
      if (!theirs.isEmpty() && !mine.isEmpty()) {
        (theirs.equals(mine) ? same : different).add(check.id());
      }
    }
    double likeness =
        CaseWeights.of(recorded, fitting) * Math.pow(ANSWER, same.size() - different.size());
    return new Similar(
        recorded, likeness, same, different, reason(recorded, fitting, answers, same, different));
  }

  private static String reason(
      RecordedCase recorded,
      Fitting fitting,
      Map<String, String> answers,
      List<String> same,
      List<String> different) {
    List<String> reasons = new ArrayList<>(CaseWeights.alike(recorded, fitting));
    if (!same.isEmpty()) {
      reasons.add(
          CountWords.of(same.size(), "same answer")
              + " ("
              + String.join(
                  ", ",
                  same.stream()
                      .map(id -> Sentences.spoken(id) + ": " + Sentences.spoken(answers.get(id)))
                      .toList())
              + ")");
    }
    if (!different.isEmpty()) {
      reasons.add(
          CountWords.of(different.size(), "other answer")
              + " ("
              + String.join(", ", different.stream().map(Sentences::spoken).toList())
              + ")");
    }
    return reasons.isEmpty() ? "the same symptom" : String.join(", ", reasons);
  }
}
