package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reply} and {@code letter-quality}. */
class ReplyCommandTest {
  private static final String KEEL =
      "From: A <a@example.org>\nSubject: Redshank\n\n"
          + "The keel creeps down overnight. The lowering valve was hard shut, it did not move.\n";
  private static final TerminalRun DEMO = TerminalRun.ofDemo(LocalDate.of(2026, 11, 29));

  @TempDir private Path folder;

  private String letter(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  @Test
  void aLetterIsToldWithBoatSymptomAnswersAndNextStep() throws IOException {
    JsonNode told = DEMO.run("reply", letter("a.eml", KEEL), "--json").ended(ExitCode.OK).json();
    assertThat(told.get("boat").asText()).isEqualTo("redshank");
    assertThat(told.get("model").asText()).isEqualTo("tarnwick-26");
    assertThat(told.get("urgent").isBoolean()).isTrue();
    assertThat(told.get("urgent").asBoolean()).isFalse();
    assertThat(told.get("kind").asText()).isEqualTo("fault");
    JsonNode first = told.get("symptoms").get(0);
    assertThat(first.get("id").asText()).isEqualTo("keel-will-not-stay-up");
    assertThat(first.get("chance").asDouble()).isBetween(0.5, 0.999);
    JsonNode words = first.get("words").get(0);
    assertThat(
            told.get("text")
                .asText()
                .substring(words.get("start").asInt(), words.get("end").asInt()))
        .isEqualTo(words.get("written").asText());
    assertThat(told.get("answers").get("keel-will-not-stay-up").get("valve-knob").asText())
        .isEqualTo("hard-shut");
    JsonNode next = told.get("next").get(0);
    assertThat(next.get("symptom").asText()).isEqualTo("keel-will-not-stay-up");
    assertThat(next.get("id").asText()).isNotEqualTo("valve-knob").isNotEmpty();
    assertThat(next.get("cautions").isArray()).isTrue();
  }

  @Test
  void whatIsNotKnownIsNull() throws IOException {
    JsonNode told =
        DEMO.run("reply", letter("a.txt", "Many thanks for the calendar!"), "--json").json();
    assertThat(told.get("boat").isNull()).isTrue();
    assertThat(told.get("model").isNull()).isTrue();
    assertThat(told.get("kind").asText()).isEqualTo("other");
    assertThat(told.get("symptoms")).isEmpty();
    assertThat(told.get("next")).isEmpty();
  }

  @Test
  void anUrgentLetterSaysSoFirst() throws IOException {
    String out =
        DEMO.run("reply", letter("a.txt", "We smell gas in the cabin of Greenshank.")).out();
    assertThat(out).startsWith("URGENT: gas can be smelt");
    assertThat(out).contains("greenshank");
  }

  @Test
  void whatIsToldCarriesTheCautionsOfItsNextStep() throws IOException {
    String path = letter("a.eml", KEEL);
    JsonNode told = DEMO.run("reply", path, "--json").json();
    String out = DEMO.run("reply", path).out();
    assertThat(
            told.get("next").get(0).get("first").size()
                + told.get("next").get(0).get("cautions").size())
        .isPositive();
    for (String of : List.of("first", "cautions")) {
      for (JsonNode caution : told.get("next").get(0).get(of)) {
        assertThat(out).contains(caution.get("short").asText());
      }
    }
  }

  @Test
  void aLineOnEachPathIsAnsweredByALine() throws IOException {
    String first = letter("a.eml", KEEL);
    String lines = first + "\n" + folder.resolve("none.eml") + "\n" + first + "\n";
    List<String> told = DEMO.typing(lines, "reply", "-").ended(ExitCode.OK).out().lines().toList();
    assertThat(told).hasSize(3);
    JsonMapper mapper = JsonMapper.builder().build();
    assertThat(mapper.readTree(told.get(0))).isEqualTo(mapper.readTree(told.get(2)));
    assertThat(mapper.readTree(told.get(1)).get("error").asText()).contains("cannot be read");
  }

  @Test
  void aLetterThatCannotBeReadIsSaid() {
    assertThat(DEMO.run("reply", folder.resolve("x.eml").toString()).ended(ExitCode.IO).err())
        .contains("cannot be read");
  }

  @Test
  void qualityIsMeasuredOnAnyFolderOfLetters() throws IOException {
    letter("a.eml", KEEL);
    Files.writeString(
        folder.resolve("a.yaml"),
        "kind: fault\nboat: redshank\nmodel: tarnwick-26\nurgent: false\n"
            + "symptoms: [keel-will-not-stay-up]\n"
            + "answers: {keel-will-not-stay-up: {valve-knob: hard-shut}}\n",
        StandardCharsets.UTF_8);
    String out = DEMO.run("letter-quality", folder.toString(), "--misses").ended(ExitCode.OK).out();
    assertThat(out.lines().filter(line -> line.startsWith("right symptom first")).findFirst())
        .hasValueSatisfying(line -> assertThat(line).endsWith("1 of    1  100.0 %"));
    assertThat(DEMO.run("letter-quality", folder.resolve("none").toString()).code())
        .isEqualTo(ExitCode.NOT_FOUND);
  }
}
