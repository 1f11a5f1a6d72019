package limberboard.letters.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import limberboard.letters.mail.Passage.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a writer said now against what is quoted, sent on, signed or added. */
class PassageSplitterTest {
  private static List<Passage> split(String... lines) {
    return PassageSplitter.of(String.join("\n", lines), false);
  }

  private static String own(List<Passage> passages) {
    return passages.stream()
        .filter(passage -> passage.kind() == Kind.OWN)
        .map(Passage::text)
        .reduce("", (a, b) -> a.isEmpty() ? b : a + "\n" + b);
  }

  private static List<Kind> kinds(List<Passage> passages) {
    return passages.stream().map(Passage::kind).toList();
  }

  @Test
  void plainWordsAreAllTheWritersOwn() {
    assertThat(split("Water under the berth.", "", "What now?"))
        .containsExactly(new Passage(Kind.OWN, "Water under the berth.\n\nWhat now?"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "On Mon, 3 Aug 2026 at 10:12, Tarnwick Boatyard wrote:",
        "On Mon, 3 Aug 2026 at 10:12, Tarnwick Boatyard <desk@example.org>\nwrote:",
        "Am 03.08.2026 um 10:12 schrieb Tarnwick Boatyard:",
        "Le 3 août 2026 à 10:12, Tarnwick Boatyard a écrit :",
        "Tarnwick Boatyard wrote:",
      })
  void whatIsAnsweredIsQuoted(String attribution) {
    List<Passage> passages =
        split("It tastes salt.", "", attribution, "", "> Does it taste of salt?", "> Regards");
    assertThat(kinds(passages)).containsExactly(Kind.OWN, Kind.QUOTED);
    assertThat(own(passages)).isEqualTo("It tastes salt.");
  }

  @Test
  void answersBetweenQuotedLinesAreTheWritersOwn() {
    List<Passage> passages =
        split("> Does it taste of salt?", "No, fresh.", "> After rain?", "Only after rain.");
    assertThat(kinds(passages)).containsExactly(Kind.QUOTED, Kind.OWN, Kind.QUOTED, Kind.OWN);
    assertThat(own(passages)).isEqualTo("No, fresh.\nOnly after rain.");
  }

  @Test
  void aHeaderInTheTextBeginsAnEarlierLetter() {
    List<Passage> passages =
        split(
            "Still wet.",
            "________________________________",
            "From: Tarnwick Boatyard <desk@example.org>",
            "Sent: 3 August 2026 10:12",
            "Subject: Your oil leak",
            "",
            "Is there oil in the keel's compartment?");
    assertThat(own(passages)).isEqualTo("Still wet.");
    assertThat(kinds(passages)).containsExactly(Kind.OWN, Kind.QUOTED);
  }

  @Test
  void aHeaderInALetterThatIsSentOnBeginsWhatIsSentOn() {
    List<Passage> passages =
        PassageSplitter.of("For you.\n\nFrom: An owner\nSubject: leak\n\nIt leaks.", true);
    assertThat(kinds(passages)).containsExactly(Kind.OWN, Kind.FORWARDED);
  }

  @Test
  void aSignatureIsSetApartAndAPostscriptIsNot() {
    List<Passage> passages =
        split(
            "The keel will not come up.",
            "",
            "Kind regards,",
            "An Owner",
            "Skipper of Whimbrel, berth 12",
            "PS: the oil is milky.");
    assertThat(kinds(passages)).containsExactly(Kind.OWN, Kind.SIGNATURE, Kind.OWN);
    assertThat(own(passages)).isEqualTo("The keel will not come up.\nPS: the oil is milky.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "-- \nAn Owner\nengine trouble is my hobby",
        "Sent from my telephone",
        "Cheers\nA.",
        "Many thanks in advance\nAn Owner",
        "Mit freundlichen Grüßen\nEin Eigner",
        "This e-mail and any attachment are confidential and meant for the recipient only.",
      })
  void whatStandsBelowEachLetterIsNotSaid(String below) {
    assertThat(own(split("Water in the bilge.", "", below))).isEqualTo("Water in the bilge.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Thanks for the seal you sent, but it still leaks, and after rain there is more of it than"
            + " before.",
        "Best to say it at once: the mast moves.",
        "From: the stem, I think",
        "Thanks\n"
            + "and now to the long story of the leak, which began in May and which I tell you in"
            + " full length here.",
        "On deck all is dry.",
        "On the phone the surveyor wrote:\nthe keel bolts are sound.",
      })
  void wordsThatOnlyLookLikeAMarkAreTheWritersOwn(String text) {
    assertThat(own(split("Hello,", text, "So much for that."))).contains(text);
  }

  @Test
  void aLetterSentOnWithoutAWordIsReadAsIfWrittenNow() {
    List<Passage> passages =
        split(
            "---------- Forwarded message ----------",
            "From: Ada Reed",
            "To: the old address",
            "Subject: Slack at the wheel",
            "",
            "The wires are slack.",
            "",
            "On 3 May 2026 the yard wrote:",
            "> Is it dry?",
            "--",
            "Ada");
    assertThat(own(passages)).isEqualTo("The wires are slack.");
    assertThat(passages.get(0).kind()).isEqualTo(Passage.Kind.FORWARDED);
    assertThat(passages.get(0).text()).endsWith("Subject: Slack at the wheel");
    assertThat(passages.stream().map(Passage::kind))
        .contains(Passage.Kind.QUOTED, Passage.Kind.SIGNATURE);
  }

  @Test
  void whatIsSentOnWithAWordOfOnesOwnStaysApart() {
    assertThat(
            own(
                split(
                    "See below.",
                    "",
                    "----- Forwarded message -----",
                    "From: A",
                    "To: B",
                    "",
                    "Wet.")))
        .isEqualTo("See below.");
  }

  @Test
  void lettersSentOnOverAndOverAreReadInOneGo() {
    String each = "----- Forwarded message -----\nFrom: A\nTo: B\n\n> quoted\n\n";
    List<Passage> passages = split(each.repeat(20_000));
    assertThat(own(passages)).isEmpty();
    assertThat(String.join("", passages.stream().map(Passage::text).toList()).replaceAll("\\s", ""))
        .isEqualTo(each.repeat(20_000).replaceAll("\\s", ""));
  }

  @Test
  void nothingSaidIsLost() {
    String text =
        "Hello\n\n> old\nnew\n-- \nname\nPS: more\n\nOn Monday a man wrote:\n> older\nlast words";
    String all = String.join("", split(text).stream().map(Passage::text).toList());
    assertThat(all.replaceAll("\\s", "")).isEqualTo(text.replaceAll("\\s", ""));
  }
}
