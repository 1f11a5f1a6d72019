package limberboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterAsFile;
import limberboard.letters.mail.MailReader;
import limberboard.letters.mail.Mailbox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code reply} and {@code letter-quality}. */
class ReplyCommandTest {
  private static final String KEEL =
      "From: A <a@example.org>\nSubject: Redshank\n\n"
          + "The keel creeps down overnight. The lowering valve was hard shut, it did not move.\n";
  private static final String WHIMBREL = KEEL.replace("Redshank", "Whimbrel");
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
    JsonNode broken = mapper.readTree(told.get(1));
    assertThat(broken.get("error").asText()).contains("cannot be read");
    assertThat(broken.get("letter").asText()).endsWith("none.eml");
  }

  @Test
  void brokenLettersAmongOthersKeepNoneWaiting() throws IOException {
    String nested = "Content-Type: multipart/mixed; boundary=b\n\n--b\n".repeat(1000) + "\nwet";
    List<String> paths =
        List.of(
            letter("empty.eml", ""),
            letter("nested.eml", nested),
            letter("zeros.eml", "\0\0\0Subject: \0\n\n\0"),
            folder.toString(),
            letter("a.eml", WHIMBREL));
    List<String> told =
        DEMO.typing(String.join("\n", paths), "reply", "-")
            .ended(ExitCode.OK)
            .out()
            .lines()
            .toList();
    assertThat(told).hasSize(paths.size());
    JsonMapper mapper = JsonMapper.builder().build();
    for (int i = 0; i < 3; i++) {
      assertThat(mapper.readTree(told.get(i)).has("kind")).as(paths.get(i)).isTrue();
    }
    assertThat(mapper.readTree(told.get(3)).has("error")).isTrue();
    assertThat(mapper.readTree(told.get(4)).get("boat").asText()).isEqualTo("whimbrel");
  }

  @Test
  void theDraftIsPrintedAndSavedAsAnAnswerInTheThread() throws IOException {
    String path = letter("a.eml", "Message-ID: <one@example.org>\n" + WHIMBREL);
    Path saved = folder.resolve("draft.eml");
    JsonNode told =
        DEMO.run("reply", path, "--json", "--draft", saved.toString()).ended(ExitCode.OK).json();
    assertThat(told.get("draft").asText())
        .contains("Whimbrel")
        .contains("Caution: ")
        .contains("hard shut");
    Letter draft = LetterAsFile.read(saved);
    assertThat(draft.own().replaceAll("\\s+", " "))
        .startsWith(told.get("draft").asText().strip().replaceAll("\\s+", " ").substring(0, 200));
    assertThat(draft.head().subject()).isEqualTo("Re: Whimbrel");
    assertThat(draft.head().repliesTo()).containsExactly("<one@example.org>");
    assertThat(Files.readString(saved)).contains("To: A <a@example.org>");
  }

  @Test
  void pagesAreSentAsPdfFromWhomItIsSaid() throws IOException {
    String path = letter("a.eml", "Message-ID: <one@example.org>\n" + WHIMBREL);
    Path saved = folder.resolve("draft.eml");
    String[] words = {"reply", path, "--json", "--draft", saved.toString(), "--attach", "--from"};
    DEMO.run(with(words, "Yard <office@tarnwick.example>")).ended(ExitCode.OK);
    Letter draft = LetterAsFile.read(saved);
    assertThat(draft.head().from()).contains(new Mailbox("Yard", "office@tarnwick.example"));
    assertThat(draft.remarks()).isEmpty();
    assertThat(draft.attachments()).isNotEmpty();
    for (int i = 0; i < draft.attachments().size(); i++) {
      assertThat(draft.attachments().get(i).name()).matches("[a-z0-9-]+\\.pdf");
      try (InputStream in = Files.newInputStream(saved)) {
        byte[] pdf = MailReader.attachment(in, i + 1, 10_000_000).orElseThrow();
        assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
      }
    }
    TerminalRun.Ran refused = DEMO.run(with(words, "a@example.org\r\nBcc: all@example.org"));
    assertThat(refused.code()).isEqualTo(ExitCode.USAGE);
    assertThat(DEMO.run("reply", path, "--attach").code()).isEqualTo(ExitCode.USAGE);
  }

  private static String[] with(String[] words, String last) {
    String[] all = Arrays.copyOf(words, words.length + 1);
    all[words.length] = last;
    return all;
  }

  @Test
  void whatIsNotToBeAnsweredHasNoDraft() throws IOException {
    String path = letter("a.eml", "Auto-Submitted: auto-replied\n" + WHIMBREL);
    Path saved = folder.resolve("draft.eml");
    TerminalRun.Ran ran = DEMO.run("reply", path, "--json", "--draft", saved.toString());
    assertThat(ran.ended(ExitCode.OK).json().get("draft").isNull()).isTrue();
    assertThat(saved).doesNotExist();
    assertThat(ran.err()).contains("no draft was written");
    assertThat(DEMO.typing("", "reply", "-", "--draft", saved.toString()).code())
        .isEqualTo(ExitCode.USAGE);
  }

  @Test
  void anOwnerWhoWritesBackIsNotAskedAgain() throws IOException {
    String first = letter("a.eml", "Message-ID: <one@example.org>\n" + WHIMBREL);
    Path saved = folder.resolve("draft.eml");
    JsonNode before = DEMO.run("reply", first, "--json", "--draft", saved.toString()).json();
    String check = before.get("next").get(0).get("id").asText();
    String answer = before.get("next").get(0).get("answers").get(0).asText().replace('-', ' ');
    String ours = LetterAsFile.read(saved).head().id().orElseThrow();
    String second =
        letter(
            "b.eml",
            "From: A <a@example.org>\nSubject: Re: Whimbrel\nMessage-ID: <two@example.org>\n"
                + "In-Reply-To: "
                + ours
                + "\n\n1: "
                + answer
                + "\n");
    JsonNode told = DEMO.run("reply", second, "--json").ended(ExitCode.OK).json();
    assertThat(told.get("boat").asText()).isEqualTo("whimbrel");
    assertThat(told.get("conversation").get("letters")).anyMatch(n -> n.asText().equals("a.eml"));
    assertThat(told.get("answers").get("keel-will-not-stay-up").get(check).asText())
        .isEqualTo(answer.replace(' ', '-'));
    assertThat(told.get("next").get(0).get("id").asText()).isNotEqualTo(check);
    assertThat(DEMO.run("reply", second).out()).contains("Goes on from: ").contains("valve-knob");
    assertThat(
            DEMO.run("draft", "keel-will-not-stay-up", "--letter", second).ended(ExitCode.OK).out())
        .contains("hard shut")
        .contains("Whimbrel");
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
