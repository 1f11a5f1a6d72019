package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The check of the keel's pin, which safety puts first, on the demo's own pages. */
class SafetyFirstCommandTest {
  private static final String HOW = "push the locking pin home by hand";

  private String run(String typed, String... words) {
    return TerminalRun.ofDemo(LocalDate.of(2026, 6, 1))
        .typing(typed, words)
        .ended(ExitCode.OK)
        .all();
  }

  private String interview(String typed) {
    return run(typed, "trace", "keel-will-not-stay-up", "--boat", "whimbrel");
  }

  private JsonNode next(String... answers) throws IOException {
    String line = "keel-will-not-stay-up boat=whimbrel " + String.join(" ", answers) + "\n";
    return JsonMapper.builder().build().readTree(run(line, "trace", "-")).get("next");
  }

  @Test
  void theInterviewGoesOnOnlyWhenItIsDone() {
    String held = interview("?\n?\nyes\n1\nno\nstop\n");
    assertThat(held).contains("Make it safe before anything else", HOW, "Type done, back or stop.");
    assertThat(held.split("Check: ", -1)).as("only the pin is asked for").hasSize(2);
    assertThat(interview("?\ndone\nstop\n").split("Check: ", -1)).hasSize(3);
    assertThat(interview("neither\ndone\nstop\n").split("Check: ", -1)).hasSize(3);
    assertThat(interview("neither\nback\n1\nstop\n")).contains("Check: Is the locking pin in");
  }

  @Test
  void aSafeAnswerGoesOnAtOnce() {
    assertThat(interview("1\nstop\n"))
        .contains("If it is not so, or you can't tell: ", HOW)
        .doesNotContain("Make it safe before anything else");
  }

  @Test
  void answersGivenOnTheCommandLineDoNotGoPastIt() throws IOException {
    assertThat(next().get("id").asText()).isEqualTo("pin");
    assertThat(next().get("makeSafe").asText()).contains(HOW);
    for (String answer : new String[] {"pin=?", "pin=neither"}) {
      JsonNode held = next(answer, "valve-knob=hard-shut", "dirty-valve=not-cured");
      assertThat(held.get("kind").asText()).isEqualTo("make-safe");
      assertThat(held.get("how").asText()).contains(HOW);
      assertThat(held.get("answers").get(0).asText()).isEqualTo("made-safe");
      assertThat(held.get("cautions").get(0).get("id").asText()).isEqualTo("under-raised-keel");
      assertThat(next(answer, "pin=made-safe").get("id").asText()).isNotEqualTo("pin");
    }
    assertThat(next("valve-knob=hard-shut").get("id").asText()).isEqualTo("pin");
    assertThat(next("pin=keel-is-down").get("makeSafe").isNull()).isTrue();
  }

  @Test
  void pageTreeAndSheetSayWhatToDo() {
    assertThat(flat(run("", "read", "keel-will-not-stay-up", "--boat", "whimbrel")))
        .contains("This comes first for safety", HOW);
    String tree = flat(run("", "tree", "keel-will-not-stay-up", "--boat", "whimbrel"));
    assertThat(tree).contains("Comes first for safety", "Make it safe before anything else", HOW);
    String state =
        run("", "trace", "keel-will-not-stay-up", "--boat", "whimbrel", "--answer", "pin=?");
    assertThat(flat(state)).contains("Make it safe before anything else", HOW);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
