package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.StreamSupport;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cases are begun, closed and listed from the terminal, and count for the next trace. */
class CaseCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void workspace() {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    workspace.write(
        "articles/symptoms/wet.md",
        """
        ---
        title: Wet
        zones: [cabin]
        causes:
          - {id: seal, title: The seal leaks, weight: 3, mend: mend}
          - {id: rain, title: Rain comes in, weight: 3, mend: mend}
        checks:
          - {id: taste, ask: Salt, how: Taste., minutes: 1, answers: [salt, fresh], finds: {salt: {seal: often, rain: never}}}
        ---
        """);
  }

  private Ran run(String... words) {
    return new TerminalRun(folder, LocalDate.of(2026, 4, 1)).run(words);
  }

  private static List<String> names(JsonNode node) {
    return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
        .toList();
  }

  @Test
  void aCaseIsBegunClosedAndCounted() throws IOException {
    JsonNode begun =
        run("case", "new", "wet", "--boat", "knot", "--answer", "taste=fresh", "--json").json();
    assertThat(begun.get("id").asText()).isEqualTo("2026-04-01-wet");
    assertThat(begun.get("outcome").asText()).isEqualTo("open");
    Path file = folder.resolve("boats/cases/2026-04-01-wet.yaml");
    assertThat(file).content().doesNotContainIgnoringCase("knot").doesNotContain("17");
    assertThat(run("trace", "wet", "--json").json().get("causes").get(0).get("from").asText())
        .as("an open case proves nothing")
        .isEqualTo("workshop's estimate");
    assertThat(run("case", "list", "--open").ended(ExitCode.OK).out()).contains("not known yet");
    JsonNode closed =
        run("case", "close", "2026-04-01-wet", "--cause", "rain", "--minutes", "35", "--json")
            .json();
    assertThat(closed.get("outcome").asText()).isEqualTo("mended");
    assertThat(closed.get("mend").asText()).isEqualTo("mend");
    assertThat(closed.get("minutes").asDouble()).isEqualTo(35);
    assertThat(closed.get("answers").get("taste").asText()).isEqualTo("fresh");
    JsonNode trace = run("trace", "wet", "--json").json();
    JsonNode first = trace.get("causes").get(0);
    assertThat(first.get("id").asText()).isEqualTo("rain");
    assertThat(first.get("from").asText())
        .isEqualTo("workshop's estimate and 1 recorded case (1 with this cause)");
    assertThat(trace.get("next").get("from").asText())
        .isEqualTo("workshop's estimate and answers in 1 recorded case");
    assertThat(run("validate").out()).doesNotContain("cases/");
  }

  @Test
  void somethingElseIsKeptInWords() throws IOException {
    JsonNode found =
        run("case", "new", "wet", "--found", "a fender dripped: wet", "--keep-boat", "--json")
            .json();
    assertThat(found.get("cause").asText()).isEqualTo("something-else");
    assertThat(found.get("found").asText()).isEqualTo("a fender dripped: wet");
    assertThat(found.get("boat").asText()).isEqualTo("knot");
    assertThat(run("case", "list").out()).contains("something else, a fender dripped: wet, mended");
    assertThat(run("case", "new", "wet", "--found", "x", "--cause", "rain").code())
        .isEqualTo(ExitCode.USAGE);
  }

  @Test
  void similarCasesAreShownWithTheReason() throws IOException {
    run("case", "new", "wet", "--cause", "seal", "--answer", "taste=salt").ended(ExitCode.OK);
    run("case", "new", "wet", "--cause", "rain", "--answer", "taste=fresh").ended(ExitCode.OK);
    JsonNode like =
        run("case", "list", "--like", "wet", "--boat", "knot", "--answer", "taste=fresh", "--json")
            .json();
    assertThat(like).hasSize(2);
    assertThat(like.get(0).get("recorded").get("cause").asText()).isEqualTo("rain");
    assertThat(like.get(0).get("reason").asText()).contains("1 same answer (taste: fresh)");
    assertThat(run("case", "list", "--like", "wet", "--limit", "1").out())
        .contains("like this one: the same model");
    String documented = Files.readString(Path.of("docs/terminal.md"));
    assertThat(names(like.get(0))).allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(names(like.get(0).get("recorded")))
        .allSatisfy(key -> assertThat(documented).contains("\"" + key));
  }

  @Test
  void aTraceForAPersonNamesTheLikestEarlierCases() {
    assertThat(run("trace", "wet", "--answer", "taste=salt").out()).doesNotContain("earlier case");
    run("case", "new", "wet", "--cause", "seal", "--answer", "taste=salt").ended(ExitCode.OK);
    assertThat(run("trace", "wet", "--answer", "taste=salt").out())
        .contains("Like an earlier case: 2026-04-01-wet");
  }

  @Test
  void whatIsWrongIsSaidAndNothingIsWritten() {
    assertThat(run("case").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("case", "new", "wte").ended(ExitCode.NOT_FOUND).err()).contains("\"wet\"");
    assertThat(run("case", "new", "wet", "--answer", "taste=sour").code())
        .isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("case", "new", "wet", "--outcome", "mended").ended(ExitCode.USAGE).err())
        .contains("--cause or --found");
    assertThat(run("case", "new", "wet", "--outcome", "gone").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("case", "new", "wet", "--minutes", "-1").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("case", "new", "wet", "--on", "2027-01-01").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("case", "new", "wet", "--cause", "wind").code()).isNotEqualTo(ExitCode.OK);
    assertThat(run("case", "close", "nothing").code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("case", "list", "--like", "wet", "--limit", "0").code())
        .isEqualTo(ExitCode.USAGE);
    assertThat(folder.resolve("boats/cases"))
        .satisfiesAnyOf(
            cases -> assertThat(cases).doesNotExist(),
            cases -> assertThat(cases).isEmptyDirectory());
    run("case", "new", "wet", "--cause", "rain").ended(ExitCode.OK);
    assertThat(
            run("case", "close", "2026-04-01-wet", "--cause", "seal").ended(ExitCode.USAGE).err())
        .contains("--again");
    run("case", "close", "2026-04-01-wet", "--cause", "seal", "--again").ended(ExitCode.OK);
  }
}
