package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import limberboard.cli.TerminalRun.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cases are invented, counted, drawn and reviewed from the terminal. */
class StatisticsCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void workspace() throws IOException, java.net.URISyntaxException {
    Path from = Path.of(getClass().getResource("/limberboard/trace/leak").toURI());
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.createDirectories(folder);
        Path to = folder.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
  }

  private Ran run(String... words) {
    return new TerminalRun(folder, LocalDate.of(2026, 4, 1)).run(words);
  }

  private static List<String> names(JsonNode node) {
    return StreamSupport.stream(((Iterable<String>) node::fieldNames).spliterator(), false)
        .toList();
  }

  private void invent() {
    run("case", "invent", "--count", "40", "--seed", "3").ended(ExitCode.OK);
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> texts = new HashMap<>();
    try (Stream<Path> files = Files.list(folder.resolve("boats/cases"))) {
      for (Path file : files.toList()) {
        texts.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return texts;
  }

  @Test
  void inventedCasesAreValidAndTheSameAgain() throws IOException {
    assertThat(run("case", "invent", "--count", "40", "--seed", "3").out())
        .startsWith("40 cases written");
    Map<String, String> first = files();
    assertThat(first).hasSizeGreaterThanOrEqualTo(43).containsKey("invented-3-040.yaml");
    assertThat(run("case", "invent", "--count", "40", "--seed", "3").out())
        .startsWith("0 cases written, 40 were there already");
    assertThat(files()).isEqualTo(first);
    assertThat(run("validate").out()).doesNotContain("invented");
    Files.writeString(folder.resolve("boats/cases/invented-3-001.yaml"), "mine\n");
    assertThat(run("case", "invent", "--count", "40", "--seed", "3").code()).isEqualTo(ExitCode.IO);
    assertThat(folder.resolve("boats/cases/invented-3-001.yaml")).hasContent("mine\n");
    assertThat(run("case", "invent", "--count", "0", "--seed", "3").code())
        .isEqualTo(ExitCode.USAGE);
  }

  @Test
  void countsComeAsTextJsonTableAndDrawing() throws Exception {
    invent();
    JsonNode json = run("statistics", "--json").json();
    assertThat(json.get("cases").asInt()).isEqualTo(43);
    for (String kind : List.of("models", "years", "systems")) {
      int sum = 0;
      for (JsonNode row : json.get(kind)) {
        sum += row.get("cases").asInt();
      }
      assertThat(sum).as(kind).isEqualTo(43);
    }
    String documented = Files.readString(Path.of("docs/terminal.md"));
    assertThat(names(json)).allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(names(json.get("models").get(0)))
        .allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(run("statistics").out()).startsWith("43 recorded cases.").contains("By model");
    run("statistics", "--csv", "c.csv", "--svg", "c.svg").ended(ExitCode.OK);
    assertThat(Files.readString(folder.resolve("c.csv")))
        .startsWith("by,id,title,cases,minutes,timed,cost,paid,minutes-in-all,cost-in-all,2021")
        .contains("model,sample-24,");
    byte[] svg = Files.readAllBytes(folder.resolve("c.svg"));
    assertThat(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg))
                .getElementsByTagName("path")
                .getLength())
        .isGreaterThan(20);
    assertThat(new String(svg, java.nio.charset.StandardCharsets.UTF_8))
        .contains("43 recorded cases");
  }

  @Test
  void whatToWriteNextAndWhatWasLearntAreTold() throws IOException {
    invent();
    JsonNode hints = run("next-pages", "--json").json();
    assertThat(hints).isNotEmpty();
    String documented = Files.readString(Path.of("docs/terminal.md"));
    assertThat(names(hints.get(0))).allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(run("next-pages").out()).startsWith("1. ").contains("For example ");
    JsonNode learnt = run("learning", "--folds", "4", "--json").json();
    assertThat(learnt.get("apartAfter").asDouble())
        .isLessThan(learnt.get("apartBefore").asDouble());
    assertThat(learnt.get("review").get("replayed").asInt()).isGreaterThan(30);
    assertThat(names(learnt)).allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(names(learnt.get("review")))
        .allSatisfy(key -> assertThat(documented).contains("\"" + key));
    assertThat(run("learning").out()).contains("with what the other groups teach");
    assertThat(run("learning", "--folds", "1").code()).isEqualTo(ExitCode.USAGE);
  }

  @Test
  void withoutCasesItIsSaid() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("boats/cases"))) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    assertThat(run("statistics").ended(ExitCode.NOT_FOUND).err()).contains("case new");
    assertThat(run("learning").code()).isEqualTo(ExitCode.NOT_FOUND);
    assertThat(run("next-pages").ended(ExitCode.OK).out()).contains("suggest nothing");
  }
}
