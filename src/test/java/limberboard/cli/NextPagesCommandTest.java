package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import limberboard.cli.TerminalRun.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to write next by letters and searches, from the terminal. */
class NextPagesCommandTest {
  @TempDir Path folder;

  @BeforeEach
  void workspace() throws IOException, java.net.URISyntaxException {
    Path from = Path.of(getClass().getResource("/limberboard/trace/leak").toURI());
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
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

  private JsonNode first(String kind) throws IOException {
    for (JsonNode hint : run("next-pages", "--json").ended(ExitCode.OK).json()) {
      if (hint.get("kind").asText().equals(kind)) {
        return hint;
      }
    }
    throw new AssertionError("nothing of the kind " + kind);
  }

  @Test
  void aSearchThatFoundNothingIsListedAndItsPageBegun() throws IOException {
    run("find", "zzyzx quux").ended(ExitCode.OK);
    JsonNode hint = first("searches");
    assertThat(hint.get("words").get(0).asText()).isEqualTo("zzyzx quux");
    assertThat(hint.get("weight").asDouble()).isEqualTo(0.5);
    String documented = Files.readString(Path.of("docs/terminal.md"));
    hint.fieldNames().forEachRemaining(key -> assertThat(documented).contains("\"" + key + "\""));
    String number =
        run("next-pages")
            .out()
            .lines()
            .filter(line -> line.contains("zzyzx") && line.matches("\\d+\\..*"))
            .map(line -> line.replaceAll("\\..*", ""))
            .findFirst()
            .orElseThrow();
    run("next-pages", "--begin", number).ended(ExitCode.OK);
    assertThat(folder.resolve("articles/symptoms/zzyzx-quux.md"))
        .content()
        .contains("title: \"Zzyzx quux\"");
    assertThat(run("validate").out()).as("it says what is missing").contains("zzyzx-quux.md");
    assertThat(run("next-pages", "--begin", number).code()).isEqualTo(ExitCode.IO);
    assertThat(run("next-pages", "--begin", "999").code()).isEqualTo(ExitCode.NOT_FOUND);
  }

  @Test
  void searchesAreNotKeptWhereThatIsSwitchedOff() throws IOException {
    run("find", "zzyzx").ended(ExitCode.OK);
    Path kept = folder.resolve("index/searches");
    assertThat(kept).content().contains("2026-04-01 nothing zzyzx");
    run("next-pages", "--searches", "forget").ended(ExitCode.OK);
    assertThat(kept).content().doesNotContain("zzyzx");
    run("next-pages", "--searches", "off").ended(ExitCode.OK);
    run("find", "quux").ended(ExitCode.OK);
    assertThat(kept).content().doesNotContain("quux");
    run("next-pages", "--searches", "on").ended(ExitCode.OK);
    run("find", "quux").ended(ExitCode.OK);
    assertThat(kept).content().contains("quux");
  }

  @Test
  void aLetterWithoutAPageIsListedByItsFile() throws IOException {
    Path letters = Files.createDirectories(folder.resolve("boats/letters"));
    Files.writeString(
        letters.resolve("fridge.eml"),
        "From: Ada <ada@example.org>\nSubject: Fridge\n\n"
            + "The fridge is broken and does not get cold any more. It hums.\n");
    Files.writeString(letters.resolve("fridge.eml.state"), "state: new\nabout: \"not-covered\"\n");
    JsonNode hint = first("letters");
    assertThat(hint.get("examples").get(0).asText()).isEqualTo("fridge.eml");
    assertThat(hint.get("evidence").asText()).startsWith("1 letter tells");
    assertThat(run("next-pages", "--cases-only").out()).doesNotContain("fridge.eml");
    Files.writeString(letters.resolve("fridge.eml.state"), "state: new\nabout: \"no-fault\"\n");
    assertThat(run("next-pages").out()).doesNotContain("fridge.eml");
  }
}
