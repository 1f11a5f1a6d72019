package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code start}, and what {@code due} and {@code plan} say of a bought boat, as they are typed. */
class StartCommandTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String FILE =
      "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n"
          + "season: {from: --04-15, to: --10-15} # lies in the harbour\n";
  private static final String BOUGHT =
      FILE.replace("built: 2014\n", "built: 2014\nbought: 2026-10-03\n");
  private static final String LOG = "date,work,engine-hours,note\n2026-10-20,reading,12,\n";
  private static final String ROUND =
      "interval: {every: P1Y, left-undone: hurts}\nround: [{do: look}, {do: flare}]\n";

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    boat(BOUGHT);
    page("look", "inspect", "deck", "interval: {every: P1Y, left-undone: hurts, need: must}\n");
    page("flare", "renew", "safety", "interval: {every: P3Y, left-undone: hurts, need: must}\n");
    page("round", "inspect", "safety", ROUND);
    page(
        "hull",
        "inspect",
        "hull",
        "interval: {every: P1Y, surveyed: true, left-undone: sinks, need: must}\n");
    page("paint", "renew", "hull", "interval: {every: P2Y, left-undone: costs}\n");
    page("seal", "service", "hull", "interval: {every: P1Y}\nfits: {fitted: seal-packed}\n");
    page("young", "renew", "hull", "interval: {every: P20Y, left-undone: sinks}\n");
  }

  private void boat(String text) {
    workspace.write("boats/knot/boat.yaml", text);
  }

  private void page(String id, String work, String system, String keys) {
    workspace.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: The "
            + id
            + "\nsystem: "
            + system
            + "\nwork: "
            + work
            + "\nskill: owner\nminutes: 10\ncautions: [flood]\n"
            + "look-for: {good: Firm., bad: Loose.}\n"
            + keys
            + "---\n1. Do it.\n");
  }

  private Ran typing(String typed, String... options) {
    List<String> words = new ArrayList<>(List.of("start", "--boat", "knot"));
    words.addAll(List.of(options));
    return new TerminalRun(folder, TODAY).typing(typed, words.toArray(String[]::new));
  }

  private Ran run(String... words) {
    return new TerminalRun(folder, TODAY).run(words);
  }

  private String log() throws IOException {
    Path log = folder.resolve("boats/knot/log.csv");
    return Files.isRegularFile(log) ? Files.readString(log) : "";
  }

  @Test
  void theInterviewWritesWhatIsKnownWithHowItIsKnown() throws IOException {
    workspace.write("boats/knot/log.csv", LOG);
    Ran ran = typing("survey 12 Sep 2026\nsaid 2025\nbill May 2026\n").ended(ExitCode.OK);
    assertThat(log())
        .isEqualTo(
            "date,work,engine-hours,note,known-by\n2026-10-20,reading,12,\n"
                + "2026-09-12,hull,,,survey\n2025-01-01,round,,,said year\n"
                + "2025-01-01,look,,,said year\n2025-01-01,flare,,,said year\n"
                + "2026-05-01,paint,,,bill month\n");
    assertThat(ran.out())
        .contains("3 questions", "can sink her, or kill somebody")
        .contains("about 2025  The look, the previous owner said so, not checked")
        .contains("about May 2026  The paint, by a bill")
        .contains("Written into the log: 5 lines");
  }

  @Test
  void itEndsWithWhatIsNotKnownTheGravestFirstWithItsCautionsAndHowToPlanIt() {
    Ran ran = typing("?\ndone\n").ended(ExitCode.OK);
    String left = ran.out().substring(ran.out().indexOf("Not known: look first"));
    assertThat(left.indexOf("The hull")).isPositive().isLessThan(left.indexOf("The round"));
    assertThat(left)
        .contains("Cautions: Flooding", "Can hurt somebody")
        .contains("limberboard plan --boat knot --hours 16 --until 2027-04-14")
        .doesNotContain("The young");
    assertThat(
            run("plan", "--boat", "knot", "--hours", "16", "--until", "2027-04-14")
                .ended(ExitCode.OK)
                .out())
        .contains("The hull", "The round", "Not known when last looked at")
        .contains("nobody knows when it was last done. Before you renew or service");
  }

  @Test
  void oneByOneBackAndWhatCannotBeReadAreAskedAgain() throws IOException {
    Ran ran =
        typing("long ago\n?\nback\nseen 1.10.2026\neach\nsurvey 2026-09-12\nsaid 2026\ndone\n")
            .ended(ExitCode.OK);
    assertThat(ran.out()).contains("is no answer; write one of survey");
    assertThat(log())
        .contains("2026-10-01,hull,,,seen", "2026-01-01,flare,,,said year")
        .contains("2026-09-12,look,,,survey")
        .contains("2026-01-01,round,,,said year");
  }

  @ParameterizedTest
  @CsvSource({"stop", "''"})
  void stoppingWritesNothing(String end) throws IOException {
    Ran ran = typing("said 2025\n" + end).ended(ExitCode.OK);
    assertThat(ran.out()).contains("Nothing was written.");
    assertThat(log()).isEmpty();
  }

  @Test
  void itIsAnsweredWithoutAskingAndTakenBackInOneStep() throws IOException {
    workspace.write("boats/knot/log.csv", LOG);
    String script = "# from the papers\nround = said 2026\nlook = ?\n";
    typing(script, "--survey", "2026-09-12", "--answer", "paint=bill 2026-05", "--answers", "-")
        .ended(ExitCode.OK);
    assertThat(log())
        .contains("2026-09-12,hull,,,survey", "2026-01-01,flare,,,said year")
        .contains("2026-05-01,paint,,,bill month")
        .doesNotContain("look", "round");
    typing("", "--undo").ended(ExitCode.OK);
    assertThat(log()).isEqualTo("date,work,engine-hours,note,known-by\n2026-10-20,reading,12,\n");
    assertThat(typing("", "--undo").ended(ExitCode.NOT_FOUND).err()).contains("nothing");
  }

  @Test
  void whatIsNotAboardLeadsToWhatIsFitted() throws IOException {
    Ran ran = typing("", "--answer", "seal=none", "--answer", "hull=none").ended(ExitCode.OK);
    assertThat(ran.out())
        .contains("Not aboard, The seal: put right what is fitted, in her boat.yaml under")
        .contains("equipment: seal (one of seal-packed")
        .contains("Not aboard, The hull: it is for every boat of her kind");
    assertThat(log()).isEmpty();
  }

  @Test
  void jsonHasTheQuestionsAndThenWhatWasWritten() throws IOException {
    JsonNode asked = typing("", "--json").ended(ExitCode.OK).json();
    assertThat(asked.get("bought").asText()).isEqualTo("2026-10-03");
    assertThat(asked.has("written")).isFalse();
    assertThat(asked.get("questions")).hasSize(3);
    JsonNode hull = asked.get("questions").get(0);
    assertThat(hull.get("id").asText()).isEqualTo("hull-care");
    assertThat(hull.get("leftUndone").asText()).isEqualTo("sinks");
    assertThat(hull.get("works").get(0).get("cautions").get(0).asText()).isEqualTo("flood");
    JsonNode told = typing("", "--json", "--answer", "hull=seen 2026").ended(ExitCode.OK).json();
    assertThat(told.get("written").get(0).get("day").asText()).isEqualTo("about 2026");
    assertThat(told.get("questions").get(0).get("id").asText()).isEqualTo("round");
  }

  @Test
  void theDayOnWhichSheWasBoughtIsWrittenIntoHerFileAndNothingElseChanged() throws IOException {
    boat(FILE);
    assertThat(run("due", "--boat", "knot").out())
        .contains("Her log is empty")
        .contains("limberboard start --boat knot --bought 2026-10-03");
    assertThat(typing("done\n").ended(ExitCode.USAGE).err()).contains("--bought DATE");
    typing("done\n", "--bought", "2026-10-03").ended(ExitCode.OK);
    assertThat(Files.readString(folder.resolve("boats/knot/boat.yaml"))).isEqualTo(BOUGHT);
    assertThat(run("due", "--boat", "knot").out())
        .contains("Nobody has said yet what is known of her", "Not known: look first")
        .contains("nobody knows whether it is overdue")
        .doesNotContain("Overdue (", "Her log is empty");
  }

  @Test
  void onceSomethingIsSaidTheStartIsNotSuggestedAgain() throws IOException {
    typing("", "--answer", "hull=seen 2026").ended(ExitCode.OK);
    assertThat(run("due", "--boat", "knot").out()).doesNotContain("limberboard start");
    JsonNode due = run("due", "--boat", "knot", "--json").json();
    assertThat(due.get("start").asText()).isEqualTo("begun");
    assertThat(due.get("bought").asText()).isEqualTo("2026-10-03");
    JsonNode first = due.get("due").get(0);
    assertThat(first.get("group").asText()).isEqualTo("not-known");
    assertThat(first.get("runsOut").isNull()).isTrue();
    assertThat(first.get("since").get("origin").asText()).isEqualTo("not-known");
  }

  @ParameterizedTest
  @CsvSource({
    "--bought, 2026-12-01, in the future",
    "--bought, 2013-05-01, before she was built",
    "--bought, 2026-02-30, is no date",
    "--survey, 2027-01-05, lies in the future",
    "--answer, hull=perhaps, is no answer",
    "--answer, hul=said 2026, hull",
    "--answers, nothing.txt, there is no file"
  })
  void whatCannotBeIsRefusedAndNothingIsWritten(String option, String value, String why)
      throws IOException {
    Ran ran = typing("", option, value);
    assertThat(ran.code()).isNotEqualTo(ExitCode.OK);
    assertThat(ran.err()).contains(why);
    assertThat(log()).isEmpty();
    assertThat(Files.readString(folder.resolve("boats/knot/boat.yaml"))).isEqualTo(BOUGHT);
  }
}
