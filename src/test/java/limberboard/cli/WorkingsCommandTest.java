package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import limberboard.cli.TerminalRun.Ran;
import limberboard.workings.sums.Sums;
import org.junit.jupiter.api.Test;

/** {@code workings} on the demo workspace. */
class WorkingsCommandTest {

  private static Ran run(String... words) {
    return TerminalRun.ofDemo(LocalDate.of(2026, 3, 15)).run(words);
  }

  @Test
  void listsEveryWorking() throws IOException {
    String text = run("workings").out();
    JsonNode listed = run("workings", "--json").json().get("workings");
    for (String id : Sums.ofTheTrade().ids()) {
      assertThat(text).contains(id);
      assertThat(listed.findValuesAsText("id")).contains(id);
    }
  }

  /** Whoever adds a working explains it. */
  @Test
  void everyWorkingIsExplainedInTheDocumentation() throws IOException {
    String explained = Files.readString(Path.of("docs/workings.md"));
    assertThat(Sums.ofTheTrade().ids()).allMatch(id -> explained.contains("`" + id + "`"));
  }

  @Test
  void reckonsWithWhatIsPutIn() throws IOException {
    JsonNode json =
        run("workings", "hole-inflow", "--with", "depth=2 m", "--with", "diameter=20mm", "--json")
            .json();
    JsonNode flow = json.get("results").get(0);
    assertThat(flow.get("id").asText()).isEqualTo("flow");
    assertThat(flow.get("unit").asText()).isEqualTo("l/min");
    assertThat(flow.get("value").asDouble()).isBetween(70.8, 70.9);
    assertThat(json.get("inputs").get(0).get("usual").asBoolean()).isFalse();
    assertThat(json.get("inputs").get(2).get("usual").asBoolean()).isTrue();
  }

  @Test
  void takesFromTheBoatWhatIsKnown() throws IOException {
    assertThat(run("workings", "anode-mass", "--boat", "redshank").out())
        .contains("Water: fresh", "Alloy: magnesium");
    String length = "length=forehatch-gasket";
    assertThat(run("workings", "sealant-bead", "--boat", "dunlin", "--with", length).out())
        .contains("Length of the bead: 2.05 m");
    assertThat(run("workings", "sealant-bead", "--with", length).out())
        .contains("! Length of the bead depends on the boat");
  }

  @Test
  void saysWhatIsWrongAndWhatWouldBeRight() {
    Ran unit = run("workings", "hole-inflow", "--with", "depth=3 kg");
    assertThat(unit.code()).isEqualTo(ExitCode.USAGE);
    assertThat(unit.err()).contains("3 kg cannot be converted; write it such as 0.5 m");
    assertThat(run("workings", "hole-inflo").code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("workings", "hole-inflo").err()).contains("did you mean \"hole-inflow\"?");
    assertThat(run("workings", "hole-inflow", "--with", "depth").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("workings", "hole-inflow", "--with", "depth=1 ell").err())
        .contains("the unit \"ell\" is not known");
    assertThat(run("workings", "hole-inflow", "--boat", "dodo").code())
        .isEqualTo(ExitCode.NOT_FOUND);
  }
}
