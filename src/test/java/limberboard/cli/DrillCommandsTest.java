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
import java.util.stream.StreamSupport;
import limberboard.cli.TerminalRun.Ran;
import limberboard.drill.DrillDemo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillCommandsTest {
  private static final LocalDate ON = DrillDemo.ON;

  @TempDir Path folder;

  /** The demo's pages and boats by links, so that nothing is written among them. */
  @BeforeEach
  void makeWorkspace() throws IOException {
    for (String name : List.of("articles", "demo-boats", "index")) {
      copy(Path.of(name), folder.resolve(name));
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        boolean wanted =
            Files.isDirectory(file)
                || file.toString().endsWith(".md")
                || file.toString().endsWith("boat.yaml");
        if (wanted) {
          Files.copy(file, to.resolve(from.relativize(file).toString()));
        }
      }
    }
  }

  private Ran typing(String typed, String... words) {
    return new TerminalRun(folder, ON).typing(typed, words);
  }

  private static List<JsonNode> lines(Ran ran) throws IOException {
    List<JsonNode> lines = new ArrayList<>();
    for (String line : ran.out().lines().toList()) {
      lines.add(JsonMapper.builder().build().readTree(line));
    }
    return lines;
  }

  private static List<String> names(JsonNode node) {
    return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
        .toList();
  }

  @Test
  void aScriptPlaysADrillToItsEnd() throws IOException {
    Ran ran =
        typing(
            "caution flooding\n"
                + "check taste\n"
                + "nonsense\n"
                + "check nix\n"
                + "mend tank-leak 20\n"
                + "yard stem-fitting 40\n",
            "drill",
            "run",
            "water-in-forward-cabin",
            "--boat",
            "dunlin",
            "--seed",
            "7",
            "--json",
            "-");
    assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCode.OK);
    List<JsonNode> lines = lines(ran);
    assertThat(lines).extracting(DrillCommandsTest::names).allMatch(each -> each.size() == 1);
    assertThat(lines)
        .extracting(line -> names(line).get(0))
        .startsWith("drill", "step", "step", "error", "error", "step", "step")
        .endsWith("mark");
    String before = ran.out().substring(0, ran.out().indexOf("{\"mark\""));
    assertThat(before).doesNotContain("chance\"").doesNotContain("regret");
    JsonNode mark = lines.get(lines.size() - 1).get("mark");
    assertThat(mark.get("ended").asBoolean()).isTrue();
    assertThat(mark.get("steps")).hasSize(4);
    assertThat(mark.get("regret").asDouble()).isPositive();
    assertThat(mark.get("certainties")).hasSize(2);
  }

  @Test
  void everyKeyIsDocumented() throws IOException {
    String documented = Files.readString(Path.of("docs/terminal.md"));
    Ran ran = typing("yard\n", "drill", "run", "clutch-slips", "--boat", "dunlin", "--json", "-");
    List<JsonNode> lines = lines(ran);
    List<String> keys = new ArrayList<>();
    for (JsonNode line : lines) {
      keys.addAll(names(line));
      line.forEach(inner -> keys.addAll(names(inner)));
    }
    keys.addAll(names(lines.get(0).get("drill").get("checks").get(0)));
    keys.addAll(names(lines.get(0).get("drill").get("mends").get(0)));
    keys.addAll(names(lines.get(2).get("mark").get("steps").get(0)));
    assertThat(keys)
        .hasSizeGreaterThan(40)
        .allSatisfy(key -> assertThat(documented).containsPattern("[`.]" + key + "`"));
  }

  @Test
  void everyCautionIsNamedBeforeTheFirstStep() throws IOException {
    Ran json =
        typing("", "drill", "new", "oil-in-keel-compartment", "--boat", "whimbrel", "--json");
    JsonNode drill = json.json().get("drill");
    List<String> told = drill.get("cautions").findValuesAsText("id");
    for (String list : List.of("checks", "mends")) {
      for (JsonNode work : drill.get(list)) {
        work.get("cautions").forEach(id -> assertThat(told).contains(id.asText()));
      }
    }
    Ran text = typing("", "drill", "run", "oil-in-keel-compartment", "--boat", "whimbrel");
    String before = text.out().substring(0, text.out().indexOf("Checks:"));
    for (JsonNode caution : drill.get("cautions")) {
      assertThat(before).contains(caution.get("title").asText());
    }
  }

  @Test
  void aResultIsMarkedAgainAndRefusedOnOtherFigures() throws IOException {
    typing("yard\n", "drill", "run", "clutch-slips", "--boat", "dunlin", "--result", "r.yaml", "-")
        .ended(ExitCode.OK);
    JsonNode again = typing("", "drill", "mark", "r.yaml", "--json").ended(ExitCode.OK).json();
    assertThat(again.get("mark").get("yardAtOnce").asBoolean()).isTrue();
    Path result = folder.resolve("r.yaml");
    Files.writeString(
        folder.resolve("other.yaml"),
        Files.readString(result).replaceFirst("stamp: .*", "stamp: \"000000000000\""));
    Ran refused = typing("", "drill", "mark", "other.yaml", "r.yaml", "--json");
    assertThat(refused.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(lines(refused)).hasSize(2);
    assertThat(lines(refused).get(0).get("error").asText())
        .contains("other figures", "000000000000");
    assertThat(names(lines(refused).get(1))).containsExactly("mark");
  }

  @Test
  void badFilesAreRefusedWithWhatIsWrong() throws IOException {
    typing("yard\n", "drill", "run", "clutch-slips", "--boat", "dunlin", "--result", "r.yaml", "-");
    String good = Files.readString(folder.resolve("r.yaml"));
    assertRefused(good.replace("symptom: clutch-slips", "symptom: nix"), "no symptom \"nix\"");
    assertRefused(good.replace("boat: dunlin", "boat: nix"), "no boat \"nix\"");
    assertRefused(good.replace("- yard", "- check nix"), "step 1");
    assertRefused(good.replace("- yard", "- dance"), "step 1");
    assertRefused("nothing", "x.yaml");
  }

  private void assertRefused(String text, String says) throws IOException {
    Files.writeString(folder.resolve("x.yaml"), text);
    Ran ran = typing("", "drill", "mark", "x.yaml");
    assertThat(ran.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(ran.err()).contains(says);
  }

  @Test
  void aCauseThatTheBoatCannotHaveIsRefused() {
    String symptom = "water-in-forward-cabin";
    Ran unknown = typing("", "drill", "new", symptom, "--boat", "dunlin", "--cause", "nix");
    assertThat(unknown.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(unknown.err()).contains("no cause of water-in-forward-cabin");
    Ran cannot =
        typing("", "drill", "new", symptom, "--boat", "redshank", "--cause", "bowsprit-seal");
    assertThat(cannot.code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(cannot.err()).contains("Redshank cannot have").contains("bowsprit");
  }

  @Test
  void aStudentsProgressIsKeptAndChoosesTheNextDrill() throws IOException {
    Ran first = typing("", "drill", "new", "--student", "Anna", "--json").ended(ExitCode.OK);
    assertThat(first.json().get("why").asText()).contains("new");
    typing("yard\n", "drill", "run", "clutch-slips", "--boat", "dunlin", "--student", "Anna", "-")
        .ended(ExitCode.OK);
    JsonNode progress =
        typing("", "drill", "mark", "--student", "Anna", "--json").ended(ExitCode.OK).json();
    assertThat(progress.get("drills").asInt()).isEqualTo(1);
    assertThat(progress.get("symptoms").get(0).get("symptom").asText()).isEqualTo("clutch-slips");
    assertThat(progress.get("mistakes").get("yard-too-soon").asDouble()).isPositive();
    assertThat(typing("", "drill", "mark", "--student", "Bert").code())
        .isEqualTo(ExitCode.NOT_FOUND);
    assertThat(Files.readString(folder.resolve("drills/students/.gitignore"))).isEqualTo("*\n");
  }

  @Test
  void aDrillTouchesNothingElse() throws IOException {
    List<String> before = files();
    typing("check look\nyard\n", "drill", "run", "clutch-slips", "--boat", "dunlin", "-");
    assertThat(files()).isEqualTo(before);
  }

  private List<String> files() throws IOException {
    try (var files = Files.walk(folder)) {
      return files.map(Path::toString).sorted().toList();
    }
  }

  @Test
  void aDrillOfAFileIsPlayedAsItWasOrdered() throws IOException {
    typing(
            "",
            "drill",
            "new",
            "water-in-main-bilge",
            "--model",
            "tarnwick-26",
            "--seed",
            "4",
            "--hints",
            "1",
            "--to",
            "d.yaml")
        .ended(ExitCode.OK);
    assertThat(Files.readString(folder.resolve("d.yaml")))
        .doesNotContain("cause")
        .contains("seed: 4");
    List<JsonNode> lines =
        lines(typing("hint\nhint\ngive-up\n", "drill", "run", "d.yaml", "--json", "-"));
    assertThat(lines.get(0).get("drill").get("hints").asInt()).isEqualTo(1);
    assertThat(lines.get(1).get("step").get("said").asText()).startsWith("Best now: ");
    assertThat(lines.get(2).get("error").asText()).contains("used up");
  }

  @Test
  void theTableOfPlayersSaysWhetherMarksAreFair() throws IOException {
    Ran ran =
        typing(
            "",
            "drill-quality",
            "--symptom",
            "oil-in-keel-compartment",
            "--boat",
            "whimbrel",
            "--drills",
            "20",
            "--json");
    JsonNode row = ran.json().get("rows").get(0);
    assertThat(row.get("adviceMost").asDouble())
        .isLessThanOrEqualTo(row.get("gap").asDouble() + 0.05);
    assertThat(row.get("yardAtOnce").asInt()).isEqualTo(20);
    assertThat(row.get("chanceRegret").asDouble())
        .isGreaterThan(5 * row.get("adviceRegret").asDouble() + 1);
    assertThat(ran.json().get("telling").get("share").asDouble()).isPositive();
    assertThat(typing("", "drill-quality", "--drills", "0").code()).isEqualTo(ExitCode.USAGE);
    assertThat(typing("", "drill-quality", "--symptom", "nix").code())
        .isEqualTo(ExitCode.NOT_FOUND);
  }
}
