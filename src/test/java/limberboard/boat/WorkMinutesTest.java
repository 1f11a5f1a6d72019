package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.OptionalInt;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Minutes in proportion to the boat; the model of the examples has 2.4 m of gasket. */
class WorkMinutesTest {
  @TempDir Path folder;

  private static final String PAGE =
      "---\ntitle: %s\nsystem: deck\nwork: service\nskill: owner\nminutes: %d\n%s---\nDo it.\n";

  private Page<Procedure> fitted(int minutes, String more) {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/procedures/round.md",
        PAGE.formatted("Round", minutes, more + "round: [{do: part, minutes: 40}, {do: mend}]\n"));
    workspace.write(
        "articles/procedures/part.md",
        PAGE.formatted("Part", 50, "minutes-for: {measure: gasket, of: 4.8 m}\n"));
    Library library = workspace.library();
    return new WorkMinutes(library, library.model("plover-20").orElseThrow().details())
        .of(library.procedure("round").orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "60, gasket, 2.4 m, 60",
    "60, gasket, 240 cm, 60",
    "60, gasket, 1.2 m, 120",
    "60, gasket, 4.8 m, 30",
    "60, gasket, 3.6 m, 40",
    "50, gasket, 3.3 m, 35",
    "10, gasket, 3.3 m, 7",
    "1, gasket, 24 m, 1",
    "9000, gasket, 1.2 m, 10000",
    "60, screws, 8, 30",
  })
  void minutesAreInProportionToTheBoat(int minutes, String measure, String of, int here) {
    Page<Procedure> page =
        fitted(minutes, "minutes-for: {measure: " + measure + ", of: " + of + "}\n");
    assertThat(page.details().minutes()).isEqualTo(here);
  }

  @Test
  void withoutASizeTheyStandAsTheyAre() {
    assertThat(fitted(47, "").details().minutes()).isEqualTo(47);
  }

  @Test
  void whereTheModelDoesNotKnowTheMeasureTheyStandAsTheyAre() {
    assertThat(fitted(47, "minutes-for: {measure: keel-oil, of: 1 l}\n").details().minutes())
        .isEqualTo(47);
  }

  @Test
  void withinARoundEachWorkGoesByItsOwnSize() {
    assertThat(fitted(20, "").details().round())
        .containsExactly(
            new Procedure.RoundWork("part", OptionalInt.of(20)),
            new Procedure.RoundWork("mend", OptionalInt.empty()));
  }
}
