package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
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

class TerminalTest {
  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    workspace.write(
        "articles/symptoms/wet-cabin.md",
        """
        ---
        title: Wet cabin
        summary: Water on the berth.
        zones: [cabin]
        said-as: [soaked cushions]
        first: [flood]
        causes:
          - {id: seal, title: The seal leaks, weight: 3, mend: mend}
          - {id: rain, title: Rain comes in, weight: 3, mend: mend-hatch}
        checks:
          - id: taste
            ask: Does it taste of salt?
            how: Taste it.
            minutes: 1
            answers: [salt, fresh-water]
            finds: {salt: {seal: always, rain: never}}
        ---
        """);
    workspace.write(
        "articles/symptoms/other-boats.md",
        """
        ---
        title: Lip seal drips
        zones: [cabin]
        fits: {fitted: seal-lip}
        causes: [{id: seal, title: The seal leaks, weight: 3, mend: mend}]
        checks:
          - {id: look, ask: Wet, how: Look., minutes: 1, answers: [yes, no], finds: {yes: {seal: always}}}
        ---
        """);
    workspace.write(
        "articles/procedures/mend-hatch.md",
        """
        ---
        title: Mend the hatch
        system: deck
        work: mend
        skill: owner
        minutes: 20
        cautions: [flood]
        materials: [{use: sealant, bead: {length: gasket, width: 5 mm, depth: 2 mm}}]
        ---
        1. Bed it again.
        """);
  }

  private TerminalRun terminal() {
    return new TerminalRun(folder, LocalDate.of(2026, 4, 1));
  }

  private Ran run(String... words) {
    return terminal().run(words);
  }

  private Ran runTyping(String typed, String... words) {
    return terminal().typing(typed, words);
  }

  private static List<String> names(JsonNode node) {
    return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
        .toList();
  }

  @Test
  void traceAsJsonHasTheDocumentedKeys() throws IOException {
    JsonNode trace = run("trace", "wet-cabin", "--boat", "knot", "--json").json();
    assertThat(names(trace))
        .containsExactly(
            "symptom",
            "boat",
            "cautions",
            "causes",
            "next",
            "expectedMinutes",
            "atLeastMinutes",
            "done",
            "settled",
            "answers",
            "changed",
            "contradiction",
            "secondFault",
            "earlier");
    assertThat(names(trace.get("cautions").get(0)))
        .containsExactly(
            "id",
            "title",
            "short",
            "rule",
            "grave",
            "emergency",
            "question",
            "danger",
            "do",
            "seek");
    assertThat(names(trace.get("causes").get(0)))
        .containsExactly("id", "title", "chance", "word", "mend", "from");
    assertThat(names(trace.get("next")))
        .containsExactly(
            "kind",
            "id",
            "text",
            "minutes",
            "why",
            "how",
            "answers",
            "open",
            "cautions",
            "makeSafe",
            "from");
  }

  @Test
  void everyCommandIsInTheDocumentation() throws IOException {
    String documented = Files.readString(Path.of("docs/terminal.md"));
    String help = run("--help").out();
    List<String> commands =
        help.substring(help.indexOf("Commands:"), help.indexOf("Examples:"))
            .lines()
            .filter(line -> line.matches("  [a-z].*"))
            .map(line -> line.strip().replaceFirst(" .*", ""))
            .toList();
    assertThat(commands).contains("trace", "pictures").hasSizeGreaterThan(10);
    assertThat(commands)
        .allSatisfy(command -> assertThat(documented).containsPattern("\\| `" + command + "[ `]"));
  }

  @Test
  void everyKeyOfTheJsonIsInTheDocumentation() throws IOException {
    String documented = Files.readString(Path.of("docs/terminal.md"));
    JsonNode trace = run("trace", "wet-cabin", "--boat", "knot", "--json").json();
    assertThat(trace.findValues("id")).isNotEmpty();
    for (JsonNode node : List.of(trace, trace.get("next"), trace.get("causes").get(0))) {
      assertThat(names(node)).allSatisfy(name -> assertThat(documented).contains("\"" + name));
    }
  }

  @Test
  void chancesComeToOneAndTheNextStepSaysWhy() throws IOException {
    JsonNode trace = run("trace", "wet-cabin", "--json").json();
    double sum = 0;
    for (JsonNode cause : trace.get("causes")) {
      sum += cause.get("chance").asDouble();
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(trace.get("next").get("kind").asText()).isEqualTo("check");
    assertThat(trace.get("next").get("why").asText()).isNotBlank();
    assertThat(trace.get("expectedMinutes").asDouble()).isPositive();
    assertThat(trace.get("done").asBoolean()).isFalse();
  }

  @Test
  void anAnswerLeadsToItsCause() throws IOException {
    JsonNode trace = run("trace", "wet-cabin", "--answer", "taste=fresh-water", "--json").json();
    assertThat(trace.get("causes").get(0).get("id").asText()).isEqualTo("rain");
    assertThat(trace.get("causes").get(0).get("chance").asDouble()).isGreaterThan(0.8);
    assertThat(trace.get("next").get("id").asText()).isEqualTo("mend-hatch");
    assertThat(trace.get("done").asBoolean()).isTrue();
    assertThat(trace.get("changed").asText()).isNotBlank();
  }

  @Test
  void notBeingAbleToTellChangesNoChance() throws IOException {
    JsonNode before = run("trace", "wet-cabin", "--json").json();
    JsonNode after = run("trace", "wet-cabin", "--answer", "taste=?", "--json").json();
    assertThat(after.get("causes")).isEqualTo(before.get("causes"));
    assertThat(after.get("next").get("kind").asText()).isNotEqualTo("check");
  }

  @Test
  void aMendThatDidNotCureIsAnAnswerToo() throws IOException {
    JsonNode before = run("trace", "wet-cabin", "--boat", "knot", "--json").json();
    JsonNode after =
        run("trace", "wet-cabin", "--boat", "knot", "--answer", "seal=not-cured", "--json").json();
    assertThat(chance(after, "seal")).isLessThan(chance(before, "seal") / 2);
    assertThat(run("trace", "wet-cabin", "--boat", "knot", "--answer", "sail=not-cured").code())
        .isEqualTo(65);
  }

  private static double chance(JsonNode trace, String cause) {
    return StreamSupport.stream(trace.get("causes").spliterator(), false)
        .filter(node -> node.get("id").asText().equals(cause))
        .findFirst()
        .orElseThrow()
        .get("chance")
        .asDouble();
  }

  @Test
  void tracingIsComparedWithSimplerRulesAndTheBound() throws IOException {
    Ran table = run("trace-quality", "--symptom", "wet-cabin");
    assertThat(table.code()).isZero();
    assertThat(table.out())
        .contains("| wet-cabin | knot |", "exact", "1 rows, 1 of them exact")
        .contains("saved against the file's order");
    JsonNode row = run("trace-quality", "--symptom", "wet-cabin", "--json").json().get(0);
    assertThat(names(row)).containsExactly("symptom", "boat", "minutes", "aboveBest");
    assertThat(names(row.get("minutes")))
        .containsExactly(
            "ours",
            "oneStep",
            "fileOrder",
            "fileQuestions",
            "mendsOnly",
            "mostTelling",
            "atLeast",
            "exact");
    assertThat(row.get("minutes").get("exact").asBoolean()).isTrue();
    assertThat(run("trace-quality", "--symptom", "dry-cabin").code()).isEqualTo(65);
  }

  @Test
  void aTreeAsJsonHasTheDocumentedKeys() throws IOException {
    JsonNode tree = run("tree", "wet-cabin", "--boat", "knot", "--json").json();
    assertThat(names(tree))
        .containsExactly(
            "symptom",
            "boat",
            "cautions",
            "expectedMinutes",
            "atLeastMinutes",
            "rarest",
            "notDrawn",
            "forks");
    JsonNode root = tree.get("forks").get(0);
    assertThat(names(root))
        .containsExactly(
            "number",
            "kind",
            "id",
            "text",
            "minutes",
            "expectedMinutes",
            "chance",
            "open",
            "cautions",
            "makeSafe",
            "leading",
            "branches");
    assertThat(names(root.get("leading").get(0))).containsExactly("cause", "chance");
    assertThat(names(root.get("branches").get(0)))
        .containsExactly("finding", "kind", "chance", "end", "then");
    String documented = Files.readString(Path.of("docs/terminal.md"));
    for (JsonNode node : List.of(tree, root, root.get("branches").get(0))) {
      assertThat(names(node)).allSatisfy(name -> assertThat(documented).contains("\"" + name));
    }
  }

  @Test
  void aTreeBeginsWhereTheTraceStandsAndItsBranchesLeadToItsForks() throws IOException {
    JsonNode trace = run("trace", "wet-cabin", "--answer", "taste=salt", "--json").json();
    JsonNode tree =
        run("tree", "wet-cabin", "--answer", "taste=salt", "--rarest", "0", "--json").json();
    assertThat(tree.get("expectedMinutes")).isEqualTo(trace.get("expectedMinutes"));
    assertThat(tree.get("atLeastMinutes")).isEqualTo(trace.get("atLeastMinutes"));
    assertThat(tree.get("notDrawn").asDouble()).isZero();
    JsonNode forks = tree.get("forks");
    assertThat(forks.get(0).get("id")).isEqualTo(trace.get("next").get("id"));
    int ends = 0;
    for (int i = 0; i < forks.size(); i++) {
      assertThat(forks.get(i).get("number").asInt()).isEqualTo(i + 1);
      for (JsonNode branch : forks.get(i).get("branches")) {
        boolean goesOn = branch.get("end").asText().equals("fork");
        assertThat(branch.get("then").isInt()).isEqualTo(goesOn);
        assertThat(branch.get("end").asText()).isIn("fork", "mended");
        ends += goesOn ? 1 : 0;
      }
    }
    assertThat(ends).isEqualTo(forks.size() - 1);
  }

  @Test
  void aTreeAsTextHasItsCautionFirst() {
    Ran ran = run("tree", "wet-cabin", "--boat", "knot");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out())
        .containsSubsequence(
            "Cut to Knot", "CAUTION: Flooding", "How to read it", "1. Does it taste of salt?")
        .contains("    2. ", "mended, ", "Mend: Mend the hatch");
  }

  @Test
  void aTreeIsWrittenAsDrawingAndForPaper() throws IOException {
    Files.createDirectory(folder.resolve("out"));
    Ran ran = run("tree", "wet-cabin", "--svg", "out/tree.svg", "--pdf", "out/tree.pdf");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out().lines()).hasSize(2).allMatch(line -> line.startsWith("Written: "));
    assertThat(Files.readString(folder.resolve("out/tree.svg")))
        .startsWith("<svg ")
        .contains("Does it taste of salt?");
    assertThat(
            new String(
                Files.readAllBytes(folder.resolve("out/tree.pdf")), StandardCharsets.ISO_8859_1))
        .startsWith("%PDF-");
    Ran both = run("tree", "wet-cabin", "--svg", "out/tree.svg", "--json");
    assertThat(both.json().get("forks")).isNotEmpty();
    assertThat(both.err()).contains("Written: ");
  }

  @Test
  void aTreeThatCannotBeMadeOrWrittenSaysWhatWouldBeRight() throws IOException {
    Files.writeString(folder.resolve("file"), "a file, no folder");
    Ran unwritable = run("tree", "wet-cabin", "--svg", "file/tree.svg");
    assertThat(unwritable.code()).isEqualTo(ExitCode.IO);
    assertThat(unwritable.err()).contains("could not be written").contains("tree.svg");
    assertThat(run("tree", "wet-cabin", "--rarest", "2").err()).contains("a share from 0 to 1");
    assertThat(run("tree", "wet-cabin", "--rarest", "NaN").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("tree", "wet-cabn").code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("tree", "other-boats", "--boat", "knot").code()).isEqualTo(ExitCode.NOT_FOUND);
  }

  @Test
  void whatIsNotThereIsSaidWithWhatIs() {
    Ran symptom = run("trace", "wet-cabn", "--boat", "knot");
    assertThat(symptom.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(symptom.err())
        .contains("there is no symptom \"wet-cabn\"; did you mean \"wet-cabin\"?");
    Ran boat = run("trace", "wet-cabin", "--boat", "knut");
    assertThat(boat.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(boat.err()).contains("there is no boat \"knut\"; did you mean \"knot\"?");
    Ran answer = run("trace", "wet-cabin", "--answer", "taste=sweet");
    assertThat(answer.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(answer.err()).contains("salt, fresh-water");
    Ran page = run("read", "mend-hatsh");
    assertThat(page.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(page.err()).contains("did you mean \"mend-hatch\"?");
  }

  @Test
  void aSymptomOfOtherBoatsSaysWhyItIsNotForThisOne() {
    Ran ran = run("trace", "other-boats", "--boat", "knot");
    assertThat(ran.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(ran.err()).contains("other-boats is not for Knot: has no lip seal");
  }

  @Test
  void requestsAreAnsweredLineByLine() throws IOException {
    Ran ran =
        runTyping(
            "wet-cabin\nwet-cabin boat=knot taste=salt\nnothing-such\nwet-cabin taste\n",
            "trace",
            "-");
    List<String> lines = ran.out().lines().toList();
    assertThat(lines).hasSize(4);
    JsonMapper mapper = JsonMapper.builder().build();
    assertThat(mapper.readTree(lines.get(1)).get("answers").get("taste").asText())
        .isEqualTo("salt");
    assertThat(mapper.readTree(lines.get(2)).get("error").asText()).contains("no symptom");
    assertThat(mapper.readTree(lines.get(3)).get("error").asText()).contains("check=answer");
  }

  @Test
  void anInterviewShowsTheCautionBeforeItsFirstQuestionAndEndsWithTheMend() {
    Ran ran = runTyping("nonsense\n2\nyes\n", "trace", "wet-cabin");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out().indexOf("CAUTION: Flooding"))
        .isGreaterThanOrEqualTo(0)
        .isLessThan(ran.out().indexOf("Does it taste of salt?"));
    assertThat(ran.out())
        .contains("Type a number from 1 to 2, ?, back or stop.")
        .contains("Mend the hatch")
        .contains("24 ml")
        .contains("Did it cure the fault?");
  }

  @Test
  void anAnswerCanBeTakenBackAndAMendThatDidNotHelpGoesOn() {
    Ran ran = runTyping("salt\nno\nback\nstop\n", "trace", "wet-cabin");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out()).contains("Mend it").contains("Did it cure the fault?");
  }

  @Test
  void aPageIsReadForABoatAndAsPdf() throws IOException {
    Ran json = run("read", "mend-hatch", "--boat", "knot", "--json");
    assertThat(names(json.json())).containsExactly("id", "kind", "title", "path", "text");
    assertThat(json.json().get("text").asText()).contains("24 ml");
    Files.createDirectory(folder.resolve("out"));
    Ran pdf = run("read", "mend-hatch", "--pdf", "out/page.pdf");
    assertThat(pdf.code()).isEqualTo(ExitCode.OK);
    assertThat(
            new String(
                Files.readAllBytes(folder.resolve("out/page.pdf")), StandardCharsets.ISO_8859_1))
        .startsWith("%PDF-");
    assertThat(run("read", "mend-hatch", "--width", "10").code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void searchPrintsTheDocumentedKeys() throws IOException {
    JsonNode found = run("find", "soaked", "cushions", "--boat", "knot", "--json").json();
    assertThat(names(found)).containsExactly("query", "alsoLookedFor", "results");
    JsonNode first = found.get("results").get(0);
    assertThat(names(first))
        .containsExactly("id", "kind", "title", "score", "passage", "fits", "why");
    assertThat(first.get("id").asText()).isEqualTo("wet-cabin");
    Ran lines = runTyping("soaked cushions\nxyzzy\n", "find", "-");
    assertThat(lines.out().lines()).hasSize(2);
    assertThat(run("find", "soaked cushions").out()).contains("symptom").contains("Wet cabin");
    assertThat(run("find", "xyzzy").out()).contains("Nothing found");
    assertThat(run("find", "x", "--limit", "0").code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void validationCountsAndFails() throws IOException {
    Ran good = run("validate");
    assertThat(good.code()).isEqualTo(ExitCode.OK);
    assertThat(good.out())
        .contains("1 models, 1 boats, 2 symptoms with 3 causes and 2 checks")
        .endsWith("0 problems" + System.lineSeparator());
    workspace.write("articles/topics/a.md", "No header.\n");
    Ran bad = run("validate");
    assertThat(bad.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(bad.out()).contains("articles/topics/a.md:1: has no header").contains("1 problem");
    workspace.write("index/words/synonyms.txt", "alone\n");
    workspace.write("index/words/spellings.txt", "sheet: sheat\nhalyard halliard\n");
    assertThat(run("validate").out())
        .contains("index/words/synonyms.txt:1: \"alone\" stands alone; two or more words")
        .contains("index/words/spellings.txt:2: there is no colon; the right word, a colon, and")
        .contains("3 problems");
    JsonNode json = run("validate", "--json").json();
    assertThat(names(json)).containsExactly("counts", "problems");
    assertThat(names(json.get("problems").get(0)))
        .containsExactly("severity", "file", "line", "key", "wrong", "right");
  }

  private static final String ALIKE =
      """
      ---
      title: Two alike
      zones: [cabin]
      causes:
        - {id: seal, title: The seal leaks, weight: 3, mend: mend}
        - {id: rain, title: Rain comes in, weight: 3, mend: mend-hatch}
      checks:
        - id: look
          ask: Is it wet?
          how: Look.
          minutes: 100
          answers: [yes, no]
          finds: {yes: {seal: usually, rain: usually}}
      ---
      """;

  @Test
  void validationWarnsOfCausesThatCannotBeToldApart() throws IOException {
    workspace.write("articles/symptoms/alike.md", ALIKE);
    Ran ran = run("validate");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out())
        .contains("articles/symptoms/alike.md:5: warning: causes[1]: no check tells \"seal\"")
        .endsWith("1 problem" + System.lineSeparator());
    JsonNode warning = run("validate", "--json").json().get("problems").get(0);
    assertThat(warning.get("severity").asText()).isEqualTo("warning");
    assertThat(warning.get("line").asInt()).isEqualTo(5);
    assertThat(warning.get("key").asText()).isEqualTo("causes[1]");
  }

  @Test
  void aPageWithErrorsIsNotReviewed() {
    workspace.write("articles/symptoms/alike.md", ALIKE.replace("mend: mend}", "mend: nothing}"));
    Ran ran = run("validate", "--strategies");
    assertThat(ran.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(ran.out()).contains("1 problem").doesNotContain("no check tells", "never asks");
  }

  @Test
  void adviceOnStrategiesIsGivenWhenAskedForAndIsNoProblem() throws IOException {
    workspace.write("articles/symptoms/alike.md", ALIKE.replace("rain: usually", "rain: often"));
    assertThat(run("validate").out()).doesNotContain("advice").contains("0 problems");
    Ran ran = run("validate", "--strategies");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out())
        .contains("0 problems")
        .contains("articles/symptoms/alike.md:8: advice: checks[1]: the plan never asks for")
        .endsWith("1 piece of advice" + System.lineSeparator());
    JsonNode json = run("validate", "--strategies", "--json").json();
    assertThat(names(json)).containsExactly("counts", "problems", "advice");
    assertThat(names(json.get("advice").get(0)))
        .containsExactly("severity", "file", "line", "key", "wrong", "right");
    assertThat(json.get("advice").get(0).get("severity").asText()).isEqualTo("advice");
  }

  @Test
  void sensitivityHasTheDocumentedKeys() throws IOException {
    workspace.write(
        "articles/symptoms/order.md",
        """
        ---
        title: Which first
        zones: [cabin]
        causes:
          - {id: seal, title: The seal leaks, weight: 9, mend: mend}
          - {id: rain, title: Rain comes in, weight: 5, mend: mend-hatch}
        checks:
          - {id: look, ask: Wet, how: Look., minutes: 90, answers: [yes, no], finds: {yes: {seal: always}}}
        ---
        """);
    JsonNode json = run("sensitivity", "order", "--boat", "knot", "--json").json();
    assertThat(names(json))
        .containsExactly(
            "symptom",
            "boat",
            "first",
            "expectedMinutes",
            "atLeastMinutes",
            "changes",
            "estimates");
    JsonNode estimate = json.get("estimates").get(0);
    assertThat(names(estimate))
        .containsExactly(
            "kind", "cause", "check", "answer", "value", "wrong", "instead", "then", "minutesLost");
    assertThat(names(estimate.get("then"))).containsExactly("kind", "id");
    String documented = Files.readString(Path.of("docs/terminal.md"));
    for (JsonNode node : List.of(json, estimate)) {
      assertThat(names(node)).allSatisfy(name -> assertThat(documented).contains("\"" + name));
    }
    assertThat(estimate.get("kind").asText()).isEqualTo("weight");
    assertThat(estimate.get("check").isNull()).isTrue();
    assertThat(estimate.get("wrong").asText()).isIn("twice", "half");
    assertThat(run("sensitivity", "order").out())
        .contains("Worth measuring first:")
        .contains("how common seal is")
        .contains("would come first");
  }

  @Test
  void sensitivityOfWhatIsNotThereSaysSo() {
    assertThat(run("sensitivity", "wet-cabn").code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("sensitivity").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("sensitivity", "wet-cabin", "--answer", "taste").code())
        .isEqualTo(ExitCode.USAGE);
    assertThat(run("sensitivity", "wet-cabin", "--answer", "taste=salt").out())
        .contains("First step: the mend mend.");
  }

  @Test
  void boatsAreListed() throws IOException {
    assertThat(run("boats").out()).contains("Knot").contains("Plover 20").contains("hull 17");
    JsonNode boat = run("boats", "--json").json().get("boats").get(0);
    assertThat(boat.get("equipment").get("seal").asText()).isEqualTo("seal-packed");
  }

  @Test
  void withoutADisplayItSaysSoAndTracesInTheTerminal() {
    Ran ran = runTyping("9\n1\n2\n2\nyes\n");
    assertThat(ran.code()).isEqualTo(ExitCode.OK);
    assertThat(ran.out())
        .contains("There is no display here")
        .contains("Which boat?")
        .contains("Type a number from 1 to 1.")
        .contains("What do you notice?");
    assertThat(runTyping("").code()).isEqualTo(ExitCode.OK);
  }

  @Test
  void aCommandLineThatIsNotUnderstoodSaysWhatWouldBe() {
    Ran ran = run("fnd", "x");
    assertThat(ran.code()).isEqualTo(ExitCode.USAGE);
    assertThat(ran.err()).contains("Did you mean: limberboard find?");
    assertThat(run("trace").code()).isEqualTo(ExitCode.USAGE);
    assertThat(run("trace", "--help").out()).contains("SYMPTOM").contains("--answer");
  }

  @Test
  void aFolderThatIsNoWorkspaceIsSaidToBeNone() {
    Ran ran = run("validate", "--workspace", "articles/topics");
    assertThat(ran.code()).isEqualTo(ExitCode.NO_WORKSPACE);
    assertThat(ran.err()).contains("a workspace has a folder articles");
  }
}
