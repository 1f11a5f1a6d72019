package limberboard.desktop.drills;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import limberboard.drill.learn.ClassResults;
import limberboard.drill.learn.DrillRecord;
import limberboard.drill.mark.MistakeKind;
import org.junit.jupiter.api.Test;

/** Where a class loses minutes. */
class ClassFiguresTest {
  private static ClassResults.Played played(String student, String symptom, double lost, int at) {
    DrillRecord record =
        new DrillRecord(
            symptom,
            "knot",
            "deck",
            LocalDate.of(2026, 3, 15),
            100,
            lost,
            Map.of(MistakeKind.HINT, lost),
            at,
            List.of());
    return new ClassResults.Played(student, "", record, at, List.of("give-up"));
  }

  private static final ClassResults RESULTS =
      new ClassResults(
          List.of(
              played("Ada", "wet", 5, 1),
              played("Ada", "flat", 30, 0),
              played("Ben", "flat", 60, 2)));

  @Test
  void whoLostMostStandsFirstAndTheDearestSymptomToo() {
    ClassFigures figures = ClassFigures.bySymptom(RESULTS, id -> "the " + id);
    assertThat(figures.columns()).containsExactly("the flat", "the wet");
    assertThat(figures.rows()).extracting(ClassFigures.Line::student).containsExactly("Ben", "Ada");
    assertThat(figures.rows().get(0).cells())
        .containsExactly(new ClassFigures.Cell(true, 60, 2), new ClassFigures.Cell(false, 0, 0));
    assertThat(figures.rows().get(1).lost()).isEqualTo(35);
    assertThat(figures.most()).isEqualTo(60);
    assertThat(figures.none()).isEqualTo("not drilled");
  }

  @Test
  void byKindOfMistakeTheColumnsSayWhatWasWrong() {
    ClassFigures figures = ClassFigures.byMistake(RESULTS);
    assertThat(figures.columns()).containsExactly("A hint");
    assertThat(figures.rows().get(1).cells()).containsExactly(new ClassFigures.Cell(true, 35, 0));
  }
}
