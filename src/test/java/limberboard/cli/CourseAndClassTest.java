package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import limberboard.cli.TerminalRun.Ran;
import limberboard.drill.DrillDemo;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CourseAndClassTest {
  @TempDir Path folder;

  @BeforeEach
  void makeWorkspace() throws IOException {
    for (String name : new String[] {"articles", "demo-boats"}) {
      copy(Path.of(name), folder.resolve(name));
    }
    Files.createDirectories(folder.resolve("results"));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        if (Files.isDirectory(file)
            || file.toString().endsWith(".md")
            || file.toString().endsWith("boat.yaml")) {
          Files.copy(file, to.resolve(from.relativize(file).toString()));
        }
      }
    }
  }

  private Ran typing(String typed, String... words) {
    return new TerminalRun(folder, DrillDemo.ON).typing(typed, words);
  }

  private void course() {
    typing(
            "",
            "course",
            "new",
            "oil-in-keel-compartment",
            "clutch-slips",
            "--drills",
            "8",
            "--title",
            "A day: oil and ropes",
            "--to",
            "day.yaml")
        .ended(ExitCode.OK);
  }

  private void play(String student, String number, String steps) {
    typing(
            steps,
            "drill",
            "run",
            "day.yaml",
            "--number",
            number,
            "--result",
            "results/" + student + number + ".yaml",
            "-")
        .ended(ExitCode.OK);
  }

  private void named(String file, String student, String key) throws IOException {
    Path path = folder.resolve("results").resolve(file + ".yaml");
    String text = Files.readString(path);
    Files.writeString(path, "student: " + student + "\nkey: " + key + "\n" + text);
  }

  @Test
  void aCourseCoversItsSymptomsAndTheirCausesAndSaysNothingOfThem() throws IOException {
    course();
    assertThat(Files.readString(folder.resolve("day.yaml")))
        .contains("A day: oil and ropes")
        .doesNotContain("cause");
    JsonNode list =
        typing("", "course", "list", "day.yaml", "--hidden", "--json").ended(ExitCode.OK).json();
    assertThat(list.get("drills")).hasSize(8);
    Set<String> hidden = new HashSet<>();
    for (JsonNode row : list.get("drills")) {
      hidden.add(row.get("symptom").asText() + " " + row.get("cause").asText());
    }
    assertThat(hidden).as("no cause twice").hasSize(8);
    assertThat(typing("", "course", "list", "day.yaml").out()).doesNotContain(": union");
  }

  @Test
  void aCourseEditedByHandIsToldWhatIsWrongAndTheRestIsKept() throws IOException {
    course();
    String text = Files.readString(folder.resolve("day.yaml"));
    String edited =
        text.replaceFirst("symptom: oil-in-keel-compartment", "symptom: oil-everywhere")
            .replaceFirst(
                "seed: \\d+\n  stamp: \\w+\n- symptom: oil", "seed: x\n  stamp: a\n- symptom: oil");
    Files.writeString(folder.resolve("day.yaml"), edited);
    Ran list = typing("", "course", "list", "day.yaml", "--json");
    assertThat(list.code()).isEqualTo(ExitCode.PROBLEMS);
    assertThat(list.json().get("problems").get(0).asText()).contains("day.yaml:", "whole number");
    assertThat(list.json().get("drills")).hasSize(7);
    assertThat(list.json().get("drills").get(0).get("wrong").asText())
        .contains("no symptom \"oil-everywhere\"");
    assertThat(Files.readString(folder.resolve("day.yaml"))).isEqualTo(edited);
    assertThat(typing("", "drill", "run", "day.yaml", "--number", "9", "-").err())
        .contains("has the drills 1 to 7");
  }

  @Test
  void aClassIsGatheredAndTwoOfOneNameAreToldApart() throws IOException {
    course();
    play("a", "1", "yard\n");
    play("b", "1", "check work-the-keel\nyard hose 50\n");
    play("c", "2", "yard\n");
    named("a1", "Anna", "k1");
    named("b1", "Anna", "k2");
    named("c2", "Bert", "k3");
    Files.copy(folder.resolve("results/c2.yaml"), folder.resolve("results/copy.yaml"));
    Files.writeString(folder.resolve("results/bad.yaml"), "symptom: [");
    Ran ran = typing("", "class", "results", "--json");
    assertThat(ran.code()).isEqualTo(ExitCode.PROBLEMS);
    JsonNode view = ran.json();
    assertThat(view.get("students").findValuesAsText("student"))
        .containsExactly("Anna (k1)", "Anna (k2)", "Bert");
    assertThat(view.get("sharedNames").get(0).asText()).isEqualTo("Anna");
    assertThat(view.get("twice").asInt()).isEqualTo(1);
    assertThat(view.get("refused")).hasSize(1);
    assertThat(view.get("refused").get(0).asText()).contains("bad.yaml");
    assertThat(view.get("all").get("drills").asInt()).isEqualTo(3);
    assertThat(view.get("students").get(0).get("mistakes").get("yard-too-soon").asDouble())
        .isPositive();
    String text = typing("", "class", "results").out();
    assertThat(text).contains("Anna (k1)", "Several students are called Anna", "counted once: 1");
  }
}
