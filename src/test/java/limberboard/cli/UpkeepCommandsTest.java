package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import limberboard.cli.TerminalRun.Ran;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code due}, {@code done} and {@code list} as they are typed, in a small workspace. */
class UpkeepCommandsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String LOG =
      "date,work,engine-hours,note\n"
          + "2024-04-01,job,,\n2025-04-01,job,,\n2026-04-01,job,,\n2026-05-01,bed,,\n";

  @TempDir Path folder;
  private TestWorkspace workspace;
  private final StringBuilder err = new StringBuilder();

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n"
            + "season: {from: --04-15, to: --10-15}\n");
    workspace.write("boats/knot/log.csv", LOG);
    page("job", "interval: {every: P1Y, phase: ashore-mast-up}\n");
    page("bed", "look-again: {after: P1M}\n");
  }

  private void page(String id, String keys) {
    workspace.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: The "
            + id
            + "\nsystem: deck\nwork: service\nskill: owner\nminutes: 10\ncautions: [flood]\n"
            + "look-for: {good: Firm., bad: Loose.}\n"
            + keys
            + "---\n1. Do it.\n");
  }

  private String run(int expected, String... words) {
    Ran ran = new TerminalRun(folder, TODAY).run(words).ended(expected);
    err.append(ran.err());
    return ran.out();
  }

  private static JsonNode json(String text) throws IOException {
    return JsonMapper.builder().build().readTree(text);
  }

  private static List<String> ids(JsonNode due) {
    List<String> ids = new ArrayList<>();
    due.forEach(item -> ids.add(item.get("id").asText() + " " + item.get("runsOut").asText()));
    return ids;
  }

  @Test
  void aDayInThePastLooksAtTheLogOfThatDay() throws IOException {
    JsonNode then = json(run(0, "due", "--boat", "knot", "--on", "2025-06-01", "--json"));
    assertThat(ids(then.get("due"))).containsExactly("job 2026-04-01");
    assertThat(then.get("laterEntries").asInt()).isEqualTo(2);
    assertThat(then.get("questions")).isEmpty();
    JsonNode all = json(run(0, "due", "--on", "2026-05-20", "--json"));
    assertThat(ids(all.get("boats").get(0).get("due")))
        .containsExactly("bed/again 2026-06-01", "job 2027-04-01");
  }

  @Test
  void workThatIsDoneMovesItsDateAndUndoBringsTheFileBack() throws IOException {
    Path log = folder.resolve("boats/knot/log.csv");
    String said = run(0, "done", "job", "--boat", "knot", "--note", "early, for once");
    assertThat(said).contains("Next: The job by 25 November 2027");
    assertThat(Files.readString(log)).isEqualTo(LOG + "2026-11-25,job,,\"early, for once\"\n");
    assertThat(run(0, "due", "--boat", "knot", "--coming")).contains("25 November 2027   The job");
    assertThat(run(0, "done", "job", "--boat", "knot", "--undo")).contains("Taken out of the log");
    assertThat(Files.readString(log)).isEqualTo(LOG);
  }

  private void round() {
    String yearly = "interval: {every: P1Y, phase: ashore-mast-up, ";
    page("round", yearly + "need: should}\nround: [{do: job, minutes: 4}, {do: rig}]\n");
    page("rig", yearly + "left-undone: hurts, need: must}\n");
    page("wax", yearly + "left-undone: looks, need: optional}\n");
    page(
        "gas",
        yearly + "left-undone: sinks}\nappointment: {with: rigger, minutes: 3, book: P6W}\n");
  }

  @Test
  void aRoundIsOneLineWithWhatIsDueAndTheGravestComesFirst() throws IOException {
    round();
    JsonNode due = json(run(0, "due", "--boat", "knot", "--on", "2026-03-20", "--json"));
    assertThat(said(due))
        .containsExactly(
            "gas sinks should null 3 overdue",
            "round hurts must null 10 overdue",
            "rig hurts must round 10 overdue",
            "job costs should round 4 this-season",
            "wax looks optional null 10 optional");
    assertThat(due.get("appointments").get(0).toString())
        .isEqualTo(
            "{\"id\":\"gas\",\"with\":\"rigger\",\"ownerMinutes\":3,\"book\":\"2026-03-20\"}");
    String text = run(0, "due", "--boat", "knot", "--on", "2026-03-20");
    assertThat(text)
        .contains("Overdue (2; 27 min practised, 41 min the first time)")
        .contains("left undone it can hurt somebody, or lose the rig, rudder or keel")
        .contains("with it: The job (4 min)")
        .contains("Optional, for whoever likes to (1;")
        .contains("A rigger: call now")
        .contains("The gas, book now: should have been booked by ");
  }

  private static List<String> said(JsonNode due) {
    List<String> said = new ArrayList<>();
    for (JsonNode each : due.get("due")) {
      said.add(
          Stream.of("id", "leftUndone", "need", "round", "ownerMinutes", "group")
              .map(key -> each.get(key).asText())
              .collect(Collectors.joining(" ")));
    }
    return said;
  }

  @Test
  void aListHasTheRoundOnOneLine() throws IOException {
    round();
    JsonNode list =
        json(run(0, "list", "fitting-out", "--boat", "knot", "--on", "2026-03-20", "--json"));
    List<String> lines = new ArrayList<>();
    list.get("parts")
        .forEach(
            part ->
                part.get("lines")
                    .forEach(
                        line ->
                            lines.add(
                                line.get("page").asText()
                                    + " "
                                    + line.get("minutes")
                                    + line.get("with").findValuesAsText("page"))));
    assertThat(lines).contains("round 24[job, rig]").hasSize(3);
    assertThat(list.get("workMinutes").asInt()).isEqualTo(24 + 10 + 3);
  }

  @Test
  void aRoundThatIsDoneWritesWhatWasDueWithIt() throws IOException {
    round();
    Path log = folder.resolve("boats/knot/log.csv");
    run(0, "done", "round", "--boat", "knot", "--on", "2026-03-20", "--alone");
    run(0, "done", "round", "--boat", "knot", "--undo");
    assertThat(Files.readString(log)).isEqualTo(LOG);
    String said = run(0, "done", "round", "--boat", "knot", "--on", "2026-03-20");
    assertThat(said).contains("With it: 20 March 2026 rig").contains("With it: 20 March 2026 job");
    assertThat(Files.readString(log))
        .contains("2026-03-20,round,,", "2026-03-20,rig,,", "2026-03-20,job,,");
    assertThat(run(0, "due", "--boat", "knot", "--on", "2026-03-21")).doesNotContain("The rig");
  }

  @Test
  void aYearCountsARoundOnceAndTheOwnersOwnTimeOfAppointments() throws IOException {
    round();
    JsonNode year = json(run(0, "year", "--boat", "knot", "--on", "2026-03-20", "--json"));
    List<String> lines = new ArrayList<>();
    year.get("lines")
        .forEach(
            line ->
                lines.add(
                    line.get("page").asText()
                        + " "
                        + line.get("need").asText()
                        + " "
                        + line.get("times").asDouble()
                        + " "
                        + line.get("minutes").asDouble()));
    assertThat(lines)
        .containsExactly("round must 1.0 24.0", "gas should 1.0 3.0", "wax optional 1.0 10.0");
    assertThat(run(0, "year", "--boat", "knot", "--on", "2026-03-20"))
        .contains("Must: 1 of these 1 in a year, 24 min practised, 36 min the first time");
  }

  @Test
  void aLookAgainIsLoggedAsSuch() throws IOException {
    run(0, "done", "bed", "--boat", "knot", "--again", "--on", "2026-06-01");
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv")))
        .contains("2026-06-01,looked-again,,,bed\n");
    assertThat(run(0, "due", "--boat", "knot", "--on", "2026-06-02")).doesNotContain("Look again");
  }

  @Test
  void whatCannotBeIsRefusedAndNothingIsWritten() throws IOException {
    run(ExitCode.USAGE, "done", "job", "--boat", "knot", "--on", "2027-01-01");
    run(ExitCode.NOT_FOUND, "done", "jbo", "--boat", "knot");
    run(ExitCode.NOT_FOUND, "done", "bed", "--boat", "knot", "--undo", "--on", "2020-01-01");
    run(ExitCode.USAGE, "done", "job", "--boat", "knot", "--hours", "-3");
    run(ExitCode.USAGE, "done", "job", "--boat", "knot", "--on", "2026-02-30");
    assertThat(err.toString())
        .contains("lies in the future")
        .contains("did you mean \"job\"?")
        .contains("no such entry on 2020-01-01");
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(LOG);
  }

  @Test
  void doubtfulLinesAreQuestionedAndNotCounted() throws IOException {
    workspace.write(
        "boats/knot/log.csv",
        LOG
            + "2026-12-24,job,,\n"
            + "2026-06-01,reading,500,\n"
            + "2026-07-01,reading,50,\n"
            + "2026-13-01,job,,\n");
    JsonNode due = json(run(0, "due", "--boat", "knot", "--json"));
    assertThat(due.get("questions").toString())
        .contains("log.csv:6: warning: date: 2026-12-24 lies in the future")
        .contains("log.csv:8: warning: engine-hours: 50 on 2026-07-01")
        .contains("log.csv:9: date: \\\"2026-13-01\\\" is no date");
    assertThat(ids(due.get("due"))).contains("job 2027-04-01");
    assertThat(run(ExitCode.PROBLEMS, "validate")).contains("lies in the future");
  }

  @Test
  void aSeasonThatIsOverIsListedAsWhenItsWorkBegan() throws IOException {
    JsonNode list =
        json(run(0, "list", "fitting-out", "--boat", "knot", "--season", "2025", "--json"));
    assertThat(list.get("on").asText()).isEqualTo("2024-10-16");
    assertThat(list.toString()).contains("\"job\"").contains("Firm.").contains("Loose.");
    JsonNode coming = json(run(0, "list", "fitting-out", "--boat", "knot", "--json"));
    assertThat(coming.get("on").asText()).isEqualTo("2026-11-25");
  }

  @Test
  void doneAnswersProgramsToo() throws IOException {
    JsonNode done = json(run(0, "done", "bed", "--boat", "knot", "--json"));
    assertThat(done.get("takenOut").asBoolean()).isFalse();
    assertThat(done.get("next").get(0).get("id").asText()).isEqualTo("bed/again");
    assertThat(done.get("next").get(0).get("runsOut").asText()).isEqualTo("2026-12-25");
    JsonNode undone = json(run(0, "done", "bed", "--boat", "knot", "--undo", "--json"));
    assertThat(undone.get("takenOut").asBoolean()).isTrue();
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(LOG);
  }

  @Test
  void cautionsOfTheWorkStandBeforeIt() throws IOException {
    String text = run(0, "due", "--boat", "knot", "--on", "2026-06-10");
    assertThat(text.indexOf("Cautions: ")).isBetween(0, text.indexOf("Look again"));
    assertThat(json(run(0, "due", "--boat", "knot", "--json")).get("due").get(0).get("cautions"))
        .isNotEmpty();
  }

  @Test
  void countsThatCouldHarmTheLogAreRefused() throws IOException {
    for (String count : List.of("=2", "date=2", "of=2", "note=3", "a,b=3", "Hoists=1")) {
      run(ExitCode.USAGE, "done", "reading", "--boat", "knot", "--count", count);
    }
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(LOG);
    run(0, "done", "reading", "--boat", "knot", "--count", "hoists=2");
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv")))
        .contains("2026-11-25,reading,,,2\n");
  }

  @Test
  void doubtfulEntriesAreQuestionedAtOnce() {
    run(0, "done", "reading", "--boat", "knot", "--hours", "500", "--on", "2026-06-01");
    assertThat(run(0, "done", "reading", "--boat", "knot", "--hours", "3"))
        .contains("Please look: the hours do not go with the readings");
    assertThat(run(0, "done", "job", "--boat", "knot", "--on", "1999-01-01"))
        .contains("she was new only on 2014-01-01");
  }

  @Test
  void anOpenQuoteSaysFromWhichLineOnNothingIsCounted() throws IOException {
    workspace.write("boats/knot/log.csv", LOG + "2026-06-01,job,,\"oops\n2026-07-01,job,,\n");
    assertThat(json(run(0, "due", "--boat", "knot", "--json")).get("questions").toString())
        .contains("log.csv:6: cannot be read from here on")
        .doesNotContain("apache");
  }

  @Test
  void allOutputsThatWereAskedForAreMade() throws IOException {
    String[] all = {
      "due", "--boat", "knot", "--json", "--ics", "a.ics", "--csv", "a.csv", "--svg", "a.svg"
    };
    assertThat(json(run(0, all)).get("boat").asText()).isEqualTo("knot");
    assertThat(folder.resolve("a.ics")).exists();
    assertThat(folder.resolve("a.csv")).exists();
    assertThat(folder.resolve("a.svg")).exists();
  }

  @Test
  void whatIsNotANumberIsNeverReckonedWith() {
    run(ExitCode.USAGE, "workings", "hole-inflow", "--with", "depth=abc");
    run(ExitCode.NOT_FOUND, "workings", "--boat", "nobody");
    run(ExitCode.USAGE, "list", "fitting-out", "--boat", "knot", "--season", "1800");
    run(ExitCode.USAGE, "due", "--on", "2026-02-30");
    assertThat(err.toString())
        .contains("Write a number with its unit")
        .contains("\"2026-02-30\" is no date")
        .doesNotContain("java.time");
  }

  @Test
  void aCalendarIsForOneBoat() throws IOException {
    run(ExitCode.USAGE, "due", "--ics", "x.ics");
    run(0, "due", "--boat", "knot", "--ics", "x.ics", "--remind", "3");
    assertThat(Files.readString(folder.resolve("x.ics"))).contains("SUMMARY:Knot: The job");
  }

  @ParameterizedTest
  @CsvSource({
    "--hours, 530.1234567, 356.5",
    "--hours, 1e-320, 356.5",
    "--hours, 12345678, seven digits",
    "--count, hoists=123456789, eight digits",
    "--count, hoists=many, such as 12",
    "--on, 1899-12-31, 1900 to 2200"
  })
  void whatTheLogCouldNotHoldIsRefusedBeforeWritingWithWhatWouldBeRight(
      String option, String value, String right) throws IOException {
    run(ExitCode.USAGE, "done", "reading", "--boat", "knot", option, value);
    assertThat(err.toString()).contains(right);
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(LOG);
  }

  @Test
  void hoursMayHaveADecimalComma() throws IOException {
    run(0, "done", "reading", "--boat", "knot", "--hours", "530,25");
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).contains(",530.25,");
  }

  @Test
  void anEntryWhoseNoteHasALineBreakIsTakenOutToTheLetter() throws IOException {
    Path log = folder.resolve("boats/knot/log.csv");
    String before = LOG.replace("\n", "\r\n");
    Files.writeString(log, before);
    run(0, "done", "job", "--boat", "knot", "--note", "first\nsecond, with a \"quote\"");
    assertThat(run(0, "due", "--boat", "knot")).isNotEmpty();
    run(0, "done", "job", "--boat", "knot", "--undo");
    assertThat(Files.readString(log)).isEqualTo(before);
  }

  @Test
  void outsideAnyWorkspaceNothingIsWrittenIntoTheProgramsOwn(@TempDir Path elsewhere)
      throws IOException {
    StringWriter out = new StringWriter();
    StringWriter told = new StringWriter();
    CommandContext outside =
        new CommandContext(
            new BufferedReader(new StringReader("")),
            new PrintWriter(out),
            new PrintWriter(told),
            elsewhere,
            Optional.of(folder),
            TODAY);
    Terminal terminal = new Terminal(outside, new TerminalRun.NoWindow());
    assertThat(terminal.run("done", "job", "--boat", "knot")).isEqualTo(ExitCode.NO_WORKSPACE);
    assertThat(told.toString()).contains("--workspace");
    assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(LOG);
    assertThat(terminal.run("due", "--boat", "knot")).isZero();
  }
}
