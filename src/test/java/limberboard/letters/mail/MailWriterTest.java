package limberboard.letters.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A drafted letter as a file: fields by RFC 5322, parts by RFC 2045 to 2047, text by RFC 3676. */
class MailWriterTest {
  private static final OffsetDateTime DATE = OffsetDateTime.parse("2026-11-29T09:30:00+01:00");
  private static final String ID = "<draft-1@yard.example>";
  private static final Mailbox YARD = new Mailbox("The yard", "yard@example.org");

  private static LetterHead head(Mailbox from, String subject, List<String> before) {
    return new LetterHead(
        Optional.of(from),
        Optional.empty(),
        subject,
        Optional.empty(),
        Optional.of("<letter@owner.example>"),
        before,
        false);
  }

  private static OutgoingLetter answer(LetterHead head, String text) {
    return OutgoingLetter.answering(head, YARD, DATE, ID, text, "<p>" + text + "</p>", List.of());
  }

  private static String file(OutgoingLetter letter) {
    return new String(MailWriter.write(letter), StandardCharsets.ISO_8859_1);
  }

  private static String header(String file) {
    return file.substring(0, file.indexOf("\r\n\r\n"));
  }

  private static String unfolded(String file) {
    return header(file).replaceAll("\r\n[ \t]+", " ");
  }

  private static Letter read(OutgoingLetter letter) throws IOException {
    return MailReader.read(new ByteArrayInputStream(MailWriter.write(letter)));
  }

  @Test
  void theAnswerGoesIntoItsThreadUnderItsSubject() {
    LetterHead head =
        head(
            new Mailbox("Ann Owner", "ann@owner.example"),
            "Wet berth",
            List.of("<b@yard.example>", "<a@owner.example>"));
    String header = unfolded(file(answer(head, "Hello")));
    assertThat(header.split("\r\n"))
        .contains(
            "MIME-Version: 1.0",
            "From: The yard <yard@example.org>",
            "To: Ann Owner <ann@owner.example>",
            "Subject: Re: Wet berth",
            "Date: Sun, 29 Nov 2026 09:30:00 +0100",
            "Message-ID: " + ID,
            "In-Reply-To: <letter@owner.example>",
            "References: <a@owner.example> <b@yard.example> <letter@owner.example>");
    assertThat(header).contains("Content-Type: multipart/alternative;");
  }

  @Test
  void itIsReadAgainAsItWasWritten() throws IOException {
    String said =
        "Grüße! " + "The keel creeps down – slowly. ".repeat(9).strip() + "\n\n- “one”\n- two";
    Letter letter =
        read(
            answer(
                head(new Mailbox("Åsa, née Öst", "a@b.example"), "Kiel – naß", List.of()), said));
    assertThat(letter.remarks()).isEmpty();
    assertThat(letter.own()).isEqualTo(said);
    assertThat(letter.head().subject()).isEqualTo("Re: Kiel – naß");
    assertThat(letter.head().id()).contains(ID);
    assertThat(letter.head().repliesTo()).containsExactly("<letter@owner.example>");
    assertThat(letter.head().from()).contains(YARD);
    assertThat(letter.head().date().orElseThrow().toInstant()).isEqualTo(DATE.toInstant());
  }

  @Test
  void aLongThreadIsFoldedBetweenItsIdsAndKeptWhole() throws IOException {
    List<String> before =
        IntStream.range(0, 60).mapToObj(i -> "<message-number-" + i + "@owner.example>").toList();
    OutgoingLetter letter = answer(head(YARD, "Leak", before), "Hello");
    assertThat(header(file(letter)).split("\r\n")).allMatch(line -> line.length() <= 78);
    List<String> wanted = new ArrayList<>(List.of("<letter@owner.example>"));
    wanted.addAll(before);
    assertThat(read(letter).head().repliesTo()).isEqualTo(wanted);
  }

  @ParameterizedTest
  @CsvSource({
    "Leak, Re: Leak",
    "Re: Leak, Re: Leak",
    "RE: Re: AW: Leak, Re: Leak",
    "Re[2]: Leak, Re: Leak",
    "Regarding the leak, Re: Regarding the leak",
    "'', Re:"
  })
  void reStandsOnce(String subject, String answered) {
    assertThat(OutgoingLetter.answered(subject)).isEqualTo(answered);
  }

  @Test
  void nothingInALetterCanAddAFieldToTheHeaderOfItsAnswer() throws IOException {
    for (String end : List.of("\r\n", "\n", "\r", "\u0000", "\u0085", "\u2028", "\u000b")) {
      String bad = "x" + end + "Bcc: thief@evil.example" + end + end + "<script>body";
      List<String> ids = List.of("<a" + end + "Bcc:thief@evil.example>", "<good@owner.example>");
      for (LetterHead head :
          List.of(
              head(new Mailbox(bad, "ann@owner.example"), "Leak", ids),
              head(new Mailbox("Ann", "ann@owner.example" + bad), "Leak", ids),
              head(new Mailbox("Ann", bad + "@owner.example"), "Leak", ids),
              head(YARD, bad, ids))) {
        OutgoingLetter letter =
            OutgoingLetter.answering(
                head,
                YARD,
                DATE,
                ID,
                "Hello",
                "<p>Hello</p>",
                List.of(new SentFile("page" + end + "Bcc: thief.pdf", "application/pdf", bytes())));
        String file = file(letter);
        assertThat(file).doesNotContainPattern(Pattern.compile("(?im)^bcc\\s*:"));
        assertThat(header(file).split("\r\n(?![ \t])"))
            .allMatch(
                line ->
                    line.matches(
                        "(?s)(MIME-Version|From|To|Subject|Date|Message-ID|In-Reply-To|References"
                            + "|Content-Type|Content-Transfer-Encoding): .*"));
        assertThat(read(letter).own()).isEqualTo("Hello");
      }
    }
  }

  @Test
  void whereNoAddressCanBeReadNobodyIsWrittenTo() {
    for (String address : List.of("", "ann", "ann@", "@b", "ann@b.example, c@d.example", "a@b c")) {
      String header =
          unfolded(file(answer(head(new Mailbox("Ann", address), "Leak", List.of()), "x")));
      assertThat(header).doesNotContain("\r\nTo:");
    }
  }

  @Test
  void itIsAllInSevenBitLinesThatAreShortEnough() {
    String file =
        file(answer(head(YARD, "ü".repeat(300), List.of()), "ü ".repeat(2000) + "x".repeat(3000)));
    assertThat(file.chars()).allMatch(c -> c < 128);
    assertThat(file.split("\r\n")).allMatch(line -> line.length() <= 998);
    assertThat(file.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
  }

  @Test
  void pagesGoWithItAsFiles() throws IOException {
    OutgoingLetter letter =
        OutgoingLetter.answering(
            head(YARD, "Leak", List.of()),
            YARD,
            DATE,
            ID,
            "Hello",
            "<p>Hello</p>",
            List.of(new SentFile("rebed.pdf", "application/pdf", bytes())));
    assertThat(unfolded(file(letter))).contains("Content-Type: multipart/mixed;");
    Letter read = read(letter);
    assertThat(read.own()).isEqualTo("Hello");
    assertThat(read.attachments()).hasSize(1);
    assertThat(read.attachments().get(0).toString()).contains("rebed.pdf", "application/pdf");
    assertThat(read.attachments().get(0).toString()).contains(Integer.toString(bytes().length));
  }

  private static byte[] bytes() {
    return "%PDF-1.7 not really".getBytes(StandardCharsets.UTF_8);
  }
}
