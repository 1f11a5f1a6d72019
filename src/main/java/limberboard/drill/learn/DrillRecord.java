package limberboard.drill.learn;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import limberboard.drill.mark.Certainty;
import limberboard.drill.mark.DrillMark;
import limberboard.drill.mark.MistakeKind;

/**
 * What is remembered of a drill that a student has played.
 *
 * @param symptom symptom id
 * @param boat boat id
 * @param system what the symptom's page is filed under, or empty
 * @param played the day it was played
 * @param expected what the best plan comes to on average, in minutes
 * @param regret the skill mark, in minutes
 * @param mistakes what each kind of mistake cost, in minutes
 * @param dangers how many things could have hurt somebody
 * @param certainties what was said to be how sure of
 */
public record DrillRecord(
    String symptom,
    String boat,
    String system,
    LocalDate played,
    double expected,
    double regret,
    Map<MistakeKind, Double> mistakes,
    int dangers,
    List<Certainty> certainties) {
  private static final double[] SHARES = {1, 0.5, 0.25, 0.1, 0.02};
  private static final int WITH_DANGER = 2;

  /** Copies. */
  public DrillRecord {
    mistakes = Map.copyOf(mistakes);
    certainties = List.copyOf(certainties);
  }

  /** Of a mark. */
  public static DrillRecord of(DrillMark mark, LocalDate played) {
    return new DrillRecord(
        mark.run().drill().order().symptom(),
        mark.run().drill().order().boat(),
        mark.run().drill().fault().page().head().system().map(each -> each.word()).orElse(""),
        played,
        mark.expected(),
        mark.regret(),
        mark.mistakes(),
        mark.dangers().size(),
        mark.certainties());
  }

  /** The skill mark against what the best plan comes to, 0 or more. */
  public double share() {
    return regret / Math.max(1, expected);
  }

  /**
   * A grade for {@link RepeatRule}: 5 where no more than 2 % of the plan's minutes were lost, 4 to
   * 10 %, 3 to a quarter, 2 to a half, 1 to the whole, otherwise 0; at most 2 where there was a
   * danger. The borders are estimates: common practice, no source.
   */
  public int grade() {
    int grade = 0;
    while (grade < SHARES.length && share() <= SHARES[grade]) {
      grade++;
    }
    return dangers > 0 ? Math.min(WITH_DANGER, grade) : grade;
  }
}
