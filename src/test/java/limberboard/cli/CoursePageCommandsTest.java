package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import limberboard.cli.TerminalRun.Ran;
import limberboard.drill.DrillDemo;
import limberboard.drill.HiddenNumber;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoursePageCommandsTest {
  private static final String COURSE = "ropes";
  private static final String SAID = "The thumb tells thick from thin.";

  @TempDir Path folder;

  @BeforeEach
  void makeWorkspace() throws IOException {
    Path from = Path.of("articles");
    try (var files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Path to = folder.resolve(file.toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else if (file.toString().endsWith(".md") && !file.startsWith("articles/courses")) {
          Files.copy(file, to);
        }
      }
    }
    Files.createDirectories(folder.resolve("articles/courses"));
    page(HiddenNumber.of("clutch-slips", "rope-too-thin", 7));
  }

  private void page(int hides) throws IOException {
    Files.writeString(
        folder.resolve("articles/courses/" + COURSE + ".md"),
        """
        ---
        title: Ropes before lunch
        summary: Two ropes that slip.
        for: riggers in their first year
        hours: 1.5
        drills:
          - symptom: clutch-slips
            boat: a tarnwick-30 of 2019
            seed: 7
            hides: %d
            minutes: 30
            teach: {before: [%s]}
          - symptom: clutch-slips
            boat: a tarnwick-34 of 2014
            seed: 8
            minutes: 40
            teach: {after: [Both ends of the rope.]}
        ---
        Bring a rope of each size.
        """
            .formatted(hides, SAID));
  }

  private Ran typing(String typed, String... words) {
    return new TerminalRun(folder, DrillDemo.ON).typing(typed, words);
  }

  @Test
  void coursePagesAreListedFoundAndShownWithoutWhatIsTaught() throws IOException {
    assertThat(typing("", "course", "list").ended(ExitCode.OK).out())
        .contains(
            "ropes  Ropes before lunch: 1 h 30 min, 2 drills, for riggers in their first year");
    JsonNode all = typing("", "course", "list", "--json").ended(ExitCode.OK).json();
    assertThat(all.get(0).get("hours").asDouble()).isEqualTo(1.5);
    assertThat(typing("", "find", "ropes before lunch").ended(ExitCode.OK).out()).contains(COURSE);
    String shown = typing("", "read", COURSE).ended(ExitCode.OK).out();
    assertThat(shown)
        .contains("Bring a rope", "A rope clutch slips", "Tarnwick 34 of 2014", "40 min")
        .doesNotContain(SAID, "too thin");
  }

  @Test
  void whatIsHiddenAndCoveredIsForWhoAsksForIt() throws IOException {
    assertThat(typing("", "course", "list", COURSE).ended(ExitCode.OK).out())
        .contains("1  clutch-slips, a tarnwick-30 of 2019, 30 min")
        .doesNotContain("too-thin", "Covers");
    JsonNode list =
        typing("", "course", "list", COURSE, "--hidden", "--json").ended(ExitCode.OK).json();
    assertThat(list.get("drills").get(0).get("cause").asText()).isEqualTo("rope-too-thin");
    assertThat(list.get("covers").get(0).get("hidden").get(0).asText())
        .isEqualTo("The rope is too thin for the clutch");
    assertThat(list.get("covers").get(0).get("all").asInt()).isEqualTo(8);
  }

  @Test
  void aDrillOfAPageIsPlayedByItsNumberAndItsResultMarked() {
    Ran ran =
        typing(
            "caution rig-under-load\ncheck diameter\nyard rope-too-thin 70\n",
            "drill",
            "run",
            COURSE,
            "--number",
            "1",
            "--hints",
            "2",
            "--result",
            "r.yaml",
            "-");
    assertThat(ran.ended(ExitCode.OK).out()).contains("It was: The rope is too thin");
    assertThat(typing("", "drill", "mark", "r.yaml").ended(ExitCode.OK).out())
        .contains("It was: The rope is too thin");
    assertThat(typing("", "drill", "run", COURSE, "-").err())
        .contains("has the drills 1 to 2; say which with --number");
    assertThat(typing("", "drill", "run", COURSE, "--number", "3", "-").err())
        .contains("none of number 3");
    assertThat(typing("", "drill", "run", "rops", "--number", "1", "-").err())
        .contains("course page \"rops\"");
  }

  @Test
  void aFileIsMadeOfAPageAndPlaysTheSameDrills() throws IOException {
    typing("", "course", "new", "--from", COURSE, "--to", "day.yaml").ended(ExitCode.OK);
    assertThat(Files.readString(folder.resolve("day.yaml")))
        .contains("title: Ropes before lunch", "hides: ")
        .doesNotContain(SAID, "too-thin");
    JsonNode list =
        typing("", "course", "list", "day.yaml", "--hidden", "--json").ended(ExitCode.OK).json();
    assertThat(list.get("drills").get(0).get("cause").asText()).isEqualTo("rope-too-thin");
    assertThat(typing("", "course", "new", "--to", "x.yaml").err()).contains("--from PAGE");
  }

  @Test
  void theTrainerHasWhatIsTaughtAndTheStudentsHaveNot() throws IOException {
    String trainer = typing("", "course", "paper", COURSE).ended(ExitCode.OK).out();
    assertThat(trainer).contains(SAID, "Hidden: The rope is too thin", "The best plan takes");
    typing("", "course", "paper", COURSE, "--pdf", "s.pdf", "--key", "t.pdf").ended(ExitCode.OK);
    for (String file : new String[] {"s.pdf", "t.pdf"}) {
      String begin =
          new String(Files.readAllBytes(folder.resolve(file)), 0, 5, StandardCharsets.US_ASCII);
      assertThat(begin).isEqualTo("%PDF-");
    }
  }

  @Test
  void theNumberOfAHiddenCauseIsWrittenForAPage() {
    Ran line =
        typing(
            "",
            "course",
            "line",
            "clutch-slips",
            "--boat",
            "a Tarnwick 30 of 2019",
            "--cause",
            "rope-too-thin",
            "--seed",
            "7");
    assertThat(line.ended(ExitCode.OK).out())
        .contains(
            "boat: a tarnwick-30 of 2019",
            "hides: " + HiddenNumber.of("clutch-slips", "rope-too-thin", 7));
    assertThat(
            typing(
                    "",
                    "course",
                    "line",
                    "clutch-slips",
                    "--boat",
                    "a Tarnwick 30 of 2019",
                    "--cause",
                    "rope-too-thn")
                .err())
        .contains("rope-too-thin");
  }

  @Test
  void aNumberThatHidesNothingIsToldAndTheOthersAreKept() throws IOException {
    page(123_456);
    Ran validated = typing("", "validate");
    assertThat(validated.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(validated.out()).contains("courses/ropes.md:10", "123456 hides no cause");
    Ran list = typing("", "course", "list", COURSE);
    assertThat(list.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(list.out()).contains("CANNOT BE PLAYED: 123456", "2  clutch-slips");
    assertThat(typing("", "drill", "run", COURSE, "--number", "1", "-").err())
        .contains("123456 hides no cause");
    typing("yard\n", "drill", "run", COURSE, "--number", "2", "-").ended(ExitCode.OK);
    Ran paper = typing("", "course", "paper", COURSE);
    assertThat(paper.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(paper.err()).contains("drill 1 is left out");
  }
}
