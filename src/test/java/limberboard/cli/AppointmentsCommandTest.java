package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.TestWorkspace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code due --appointments} as it is typed, in a small workspace. */
class AppointmentsCommandTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final List<String> LINE_KEYS =
      List.of(
          "id",
          "title",
          "page",
          "group",
          "runsOut",
          "plan",
          "phase",
          "book",
          "bookBy",
          "late",
          "when",
          "ownerMinutes",
          "firstTimeMinutes",
          "leftUndone",
          "need",
          "why",
          "ownPart",
          "cautions");

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n"
            + "season: {from: --04-15, to: --10-15}\n");
    workspace.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note\n2025-04-01,gas,,\n2026-04-01,seal,,\n2026-04-01,hose,,\n"
            + "2025-04-01,weld,,\n");
    page("gas", "licensed", "P1Y", "sinks", "gas-fitter, minutes: 15, book: P6W");
    page("seal", "yard", "P1Y", "stops", "yard, minutes: 10, book: P4W");
    page("hose", "yard", "P1Y", "hurts", "yard, minutes: 20, book: P6W");
    page("weld", "yard", "P10Y", "costs", "yard, minutes: 20");
  }

  private void page(String id, String skill, String every, String left, String with) {
    workspace.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: The "
            + id
            + "\nsystem: deck\nwork: service\nskill: "
            + skill
            + "\nminutes: 90\ncautions: [flood]\n"
            + (skill.equals("licensed") ? "owner-parts: [What you look at]\n" : "")
            + "interval: {every: "
            + every
            + ", left-undone: "
            + left
            + ", need: must}\nappointment: {with: "
            + with
            + "}\n---\n## What you look at\n\nThe date on it.\n");
  }

  private String run(String... words) {
    return new TerminalRun(folder, TODAY).run(words).ended(0).out();
  }

  private static JsonNode json(String text) throws IOException {
    return JsonMapper.builder().build().readTree(text);
  }

  private static List<String> names(JsonNode node) {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  @Test
  void callsStandInOrderWithAllThatIsToBeKnown() {
    String said = run("due", "--boat", "knot", "--appointments");
    assertThat(said)
        .startsWith("Knot, ")
        .contains("3 appointments in 2 calls, 1 of them now.")
        .contains("Your own time: 45 min practised, 1 h 8 min the first time.")
        .contains("A licensed gas fitter: call now")
        .contains("The gas, book now: should have been booked by 18 February 2026")
        .contains(
            "Was due by 1 April 2026. Do it now. Left undone it can sink her, or kill somebody")
        .contains("Your own part: What you look at.")
        .contains(
            "The yard: one call by 18 February 2027 books these two, which fall near together")
        .contains("The seal, book by 4 March 2027")
        .contains("1 appointment comes after this season, the first with the yard")
        .contains("--coming lists what comes.");
    assertThat(said.indexOf("gas fitter")).isLessThan(said.indexOf("The yard: one call"));
    assertThat(run("due", "--boat", "knot", "--appointments", "--coming"))
        .contains("The yard: call by 31 March 2035")
        .doesNotContain("--coming");
  }

  @Test
  void whatIsDueNamesTheSameCalls() {
    assertThat(run("due", "--boat", "knot"))
        .contains("To be booked: 3 appointments in 2 calls, 1 of them now.")
        .contains(
            "The yard: one call by 18 February 2027 books these two, which fall near together")
        .contains("The gas, book now: should have been booked by 18 February 2026");
  }

  @Test
  void jsonKeepsItsKeys() throws IOException {
    JsonNode one = json(run("due", "--boat", "knot", "--appointments", "--json"));
    assertThat(names(one))
        .containsExactly(
            "boat", "name", "on", "ownerMinutes", "firstTimeMinutes", "calls", "later");
    JsonNode call = one.get("calls").get(0);
    assertThat(names(call)).containsExactly("with", "book", "said", "ownerMinutes", "appointments");
    JsonNode gas = call.get("appointments").get(0);
    assertThat(names(gas)).containsExactlyElementsOf(LINE_KEYS);
    assertThat(gas.get("book").asText()).isEqualTo("2026-11-25");
    assertThat(gas.get("bookBy").asText()).isEqualTo("2026-02-18");
    assertThat(gas.get("late").asBoolean()).isTrue();
    assertThat(gas.get("firstTimeMinutes").asInt()).isEqualTo(23);
    assertThat(gas.get("cautions").get(0).asText()).isEqualTo("flood");
    assertThat(one.get("later").asInt()).isEqualTo(1);
    JsonNode all = json(run("due", "--appointments", "--json"));
    assertThat(all.get("boats").get(0)).isEqualTo(one);
  }

  @Test
  void filesAreTheSameList() throws IOException {
    run("due", "--boat", "knot", "--appointments", "--csv", "a.csv", "--pdf", "a.pdf");
    assertThat(Files.readAllLines(folder.resolve("a.csv")))
        .hasSize(4)
        .first()
        .isEqualTo(
            "boat,call,with,id,title,page,runs-out,plan,book,book-by,late,when,owner-minutes,"
                + "left-undone,need,cautions");
    assertThat(folder.resolve("a.pdf")).isNotEmptyFile();
    run("due", "--boat", "knot", "--appointments", "--ics", "a.ics");
    String days = Files.readString(folder.resolve("a.ics"));
    assertThat(days.split("BEGIN:VEVENT")).hasSize(4);
    assertThat(days)
        .contains("DTSTART;VALUE=DATE:20270218")
        .contains("DTSTART;VALUE=DATE:20261125");
    run("due", "--boat", "knot", "--ics", "all.ics");
    assertThat(Files.readString(folder.resolve("all.ics")))
        .contains("SUMMARY:Knot: book the yard for “The hose”")
        .contains("SUMMARY:Knot: The hose");
  }

  @Test
  void thereIsNoDrawingOfIt() {
    assertThat(
            new TerminalRun(folder, TODAY)
                .run("due", "--boat", "knot", "--appointments", "--svg", "a.svg")
                .ended(ExitCode.USAGE)
                .err())
        .contains("--appointments has none");
    assertThat(folder.resolve("a.svg")).doesNotExist();
  }
}
