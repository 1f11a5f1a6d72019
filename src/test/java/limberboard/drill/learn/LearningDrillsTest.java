package limberboard.drill.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import limberboard.drill.mark.MistakeKind;
import limberboard.words.DayWords;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearningDrillsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private static List<Integer> days(int... grades) {
    RepeatRule rule = RepeatRule.begin(DAY);
    List<Integer> days = new ArrayList<>();
    for (int grade : grades) {
      rule = rule.after(grade, rule.due());
      days.add(rule.days());
    }
    return days;
  }

  /** Woźniak (1990): I(1) = 1, I(2) = 6, I(n) = I(n − 1) × EF; fractions are rounded up. */
  @Test
  void intervalsGrowByTheEasiness() {
    assertThat(days(4, 4, 4, 4, 4)).containsExactly(1, 6, 15, 38, 95);
    assertThat(days(5, 5, 5)).containsExactly(1, 6, 17); // 6 × 2.8 = 16.8
    assertThat(days(3, 3, 3)).containsExactly(1, 6, 13); // 6 × 2.08 = 12.48
  }

  /** What EF' = EF + (0.1 − (5 − q)(0.08 + (5 − q) 0.02)) comes to for the grades that pass. */
  @ParameterizedTest
  @CsvSource({"5, 2.6", "4, 2.5", "3, 2.36"})
  void easinessMovesWithTheGrade(int grade, double then) {
    assertThat(RepeatRule.begin(DAY).after(grade, DAY).easiness()).isCloseTo(then, within(1e-12));
  }

  /** The rule: below 3 begin again, and leave the easiness; never below 1.3. */
  @Test
  void failingBeginsAgainAndKeepsTheEasiness() {
    RepeatRule passed = RepeatRule.begin(DAY).after(5, DAY).after(5, DAY).after(5, DAY);
    RepeatRule failed = passed.after(2, DAY);
    assertThat(failed.days()).isEqualTo(1);
    assertThat(failed.repetitions()).isZero();
    assertThat(failed.easiness()).isEqualTo(passed.easiness());
    RepeatRule hard = RepeatRule.begin(DAY);
    for (int i = 0; i < 20; i++) {
      hard = hard.after(3, DAY);
    }
    assertThat(hard.easiness()).isEqualTo(1.3);
    assertThatThrownBy(() -> passed.after(6, DAY)).isInstanceOf(IllegalArgumentException.class);
  }

  private static DrillRecord drill(String symptom, int day, double regret, int dangers) {
    return new DrillRecord(
        symptom,
        "dunlin",
        "deck",
        DAY.plusDays(day),
        100,
        regret,
        regret > 0 ? Map.of(MistakeKind.CHECKED_ON, regret) : Map.of(),
        dangers,
        List.of());
  }

  @ParameterizedTest
  @CsvSource({"0, 5", "2, 5", "10, 4", "25, 3", "50, 2", "100, 1", "101, 0"})
  void gradesFollowWhatWasLost(double regret, int grade) {
    assertThat(drill("a", 0, regret, 0).grade()).isEqualTo(grade);
    assertThat(drill("a", 0, regret, 1).grade()).isEqualTo(Math.min(2, grade));
  }

  @Test
  void whatCostsMostComesNextAndWhatWentWellWaits() {
    Progress progress = new Progress("7", List.of(drill("easy", 0, 0, 0), drill("hard", 0, 80, 0)));
    List<NextDrill.Can> can =
        List.of(
            new NextDrill.Can("easy", "deck", "dunlin"),
            new NextDrill.Can("hard", "deck", "dunlin"),
            new NextDrill.Can("hard", "deck", "redshank"));
    NextDrill.Chosen chosen = new NextDrill(progress, can, DAY.plusDays(2)).chosen().orElseThrow();
    assertThat(chosen.what()).isEqualTo(new NextDrill.Can("hard", "deck", "redshank"));
    assertThat(chosen.why()).contains("come back").contains("estimate");
    assertThat(new NextDrill(progress, List.of(), DAY).chosen()).isEmpty();
    NextDrill.Chosen early = new NextDrill(progress, can, DAY).chosen().orElseThrow();
    assertThat(early.why())
        .contains("Nothing has come back yet")
        .contains(DayWords.of(DAY.plusDays(1)));
  }

  @Test
  void progressSaysWhereItCosts() {
    Progress progress =
        new Progress("7", List.of(drill("b", 3, 20, 1), drill("a", 0, 5, 0), drill("a", 1, 6, 0)));
    assertThat(progress.symptoms().keySet()).containsExactly("b", "a");
    assertThat(progress.symptoms().get("a")).isEqualTo(new Progress.Cost(2, 11, 0));
    assertThat(progress.systems()).containsEntry("deck", new Progress.Cost(3, 31, 1));
    assertThat(progress.mistakes()).containsEntry(MistakeKind.CHECKED_ON, 31.0);
    assertThat(progress.expectedShare("b", "deck")).isGreaterThan(0.1).isLessThan(0.2);
    assertThat(new Progress("7", List.of()).expectedShare("x", "deck")).isEqualTo(0.2);
  }
}
