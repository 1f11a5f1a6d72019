package limberboard.print.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Model.Choice;
import limberboard.library.value.Condition;
import limberboard.print.text.PlainText;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A boat with a toilet is not one that has no no toilet, whoever says it. */
@ContentTest
class PlainNegativesTest {
  private static Workspace workspace;

  @BeforeAll
  static void read() throws IOException {
    workspace = new WorkspaceReader(new WorkspaceFolders(Path.of(""))).read();
  }

  private static Condition with(List<String> fitted, List<String> notFitted) {
    return new Condition(null, null, null, fitted, notFitted, null, null, null, null, null);
  }

  @Test
  void noChoiceOfAnyBoatIsDeniedTwice() {
    int nothings = 0;
    ConditionWords words = new ConditionWords(workspace.library());
    for (Boat boat : workspace.boats()) {
      Fitting fitting = new Fitting(boat, LocalDate.of(2026, 5, 1));
      for (Choice choice :
          boat.model().details().equipment().stream()
              .flatMap(equipment -> equipment.choices().stream())
              .toList()) {
        Condition lacking = with(null, List.of(choice.id()));
        Fit without = fitting.judge(lacking);
        Fit having = fitting.judge(with(List.of(choice.id()), null));
        assertThat(without.fits()).isEqualTo(!having.fits());
        assertThat(without.reason() + having.reason() + words.of(lacking))
            .as(boat.name() + ", " + choice.id())
            .doesNotContain("no no ")
            .doesNotContain("without no ");
        if (choice.title().startsWith("No ") && !boat.has(choice.id())) {
          nothings++;
          assertThat(without.reason()).startsWith("has ").doesNotStartWith("has no ");
        }
      }
    }
    assertThat(nothings).isPositive();
  }

  @Test
  void pagesDoNotEither() {
    PageCutter cutter = new PageCutter(workspace.library());
    for (var page : workspace.library().pages()) {
      String text = new PlainText().render(cutter.cut(page, Optional.empty()), 1000);
      assertThat(text).as(page.id()).doesNotContain("no no ").doesNotContain("without no ");
    }
  }
}
