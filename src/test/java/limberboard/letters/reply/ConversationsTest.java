package limberboard.letters.reply;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import limberboard.letters.mail.AnswerId;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.MailReader;
import org.junit.jupiter.api.Test;

/** Which letters belong together, by RFC 5322, section 3.6.4. */
class ConversationsTest {

  private static KeptLetter letter(String name, int day, String... fields) throws IOException {
    String head = "From: a@example.org\nMessage-ID: <" + name + "@example.org>\nSubject: keel\n";
    String date = day == 0 ? "" : "Date: " + day + " May 2026 08:00:00 +0000\n";
    String mail = head + date + String.join("\n", fields) + "\n\nText of " + name + ".\n";
    byte[] bytes = mail.getBytes(StandardCharsets.UTF_8);
    return new KeptLetter(name, MailReader.read(new ByteArrayInputStream(bytes)));
  }

  private static List<String> before(KeptLetter letter, KeptLetter... kept) {
    return new Conversations(Arrays.asList(kept))
        .before(letter.letter()).stream().map(KeptLetter::name).toList();
  }

  @Test
  void aLetterComesAfterThoseThatItAnswers() throws IOException {
    KeptLetter first = letter("first", 1);
    KeptLetter second = letter("second", 2, "In-Reply-To: <first@example.org>");
    KeptLetter third = letter("third", 3, "References: <first@example.org> <second@example.org>");
    assertThat(before(third, second, third, first)).containsExactly("first", "second");
    assertThat(before(second, second, third, first)).containsExactly("first");
    assertThat(before(first, second, third, first)).isEmpty();
  }

  @Test
  void theSameSubjectJoinsNothing() throws IOException {
    assertThat(before(letter("b", 2), letter("a", 1))).isEmpty();
    assertThat(before(letter("b", 2, "In-Reply-To: <c@example.org>"), letter("a", 1))).isEmpty();
  }

  @Test
  void anAnswerOfOursThatWasNotKeptLiesBetween() throws IOException {
    String ours = "<answer.x@yard.example>";
    KeptLetter first = letter("first", 1);
    KeptLetter second =
        letter("second", 3, "In-Reply-To: " + ours, "References: <first@example.org> " + ours);
    KeptLetter other = letter("other", 2, "In-Reply-To: " + ours);
    assertThat(before(second, first, other)).containsExactly("first", "other");
  }

  @Test
  void theIdOfOurAnswerSaysWhichLetterItAnswers() throws IOException {
    KeptLetter first = letter("first", 1);
    String ours = AnswerId.of(first.letter().head(), new UUID(1, 2));
    assertThat(ours).doesNotContain("first").endsWith("@limberboard.invalid>");
    assertThat(before(letter("second", 2, "In-Reply-To: " + ours), first)).containsExactly("first");
  }

  @Test
  void anAnswerOfOursThatWasKeptIsOneOfTheLetters() throws IOException {
    KeptLetter first = letter("first", 1);
    String ours = AnswerId.of(first.letter().head(), new UUID(1, 2));
    Letter answer =
        MailReader.read(
            new ByteArrayInputStream(
                ("Message-ID: " + ours + "\nIn-Reply-To: <first@example.org>\n\nOurs.\n")
                    .getBytes(StandardCharsets.UTF_8)));
    KeptLetter kept = new KeptLetter("answer", answer);
    assertThat(kept.isOurs()).isTrue();
    assertThat(first.isOurs()).isFalse();
    assertThat(before(letter("second", 2, "In-Reply-To: " + ours), first, kept))
        .containsExactlyInAnyOrder("first", "answer");
  }

  @Test
  void lettersWithoutDatesAreFoundThroughEachOther() throws IOException {
    KeptLetter first = letter("first", 0);
    KeptLetter second = letter("second", 0, "In-Reply-To: <first@example.org>");
    KeptLetter third = letter("third", 0, "In-Reply-To: <second@example.org>");
    KeptLetter fourth = letter("fourth", 0, "In-Reply-To: <third@example.org>");
    assertThat(before(third, first, second, fourth)).containsExactly("first", "second");
  }

  @Test
  void lettersThatNameEachOtherInACircleEnd() throws IOException {
    KeptLetter one = letter("one", 1, "In-Reply-To: <two@example.org>");
    KeptLetter two = letter("two", 2, "In-Reply-To: <one@example.org>");
    KeptLetter self = letter("self", 3, "In-Reply-To: <self@example.org>");
    assertThat(before(one, one, two)).isEmpty();
    assertThat(before(self, one, two, self)).isEmpty();
  }

  @Test
  void theSameLetterTwiceIsNotBeforeItself() throws IOException {
    KeptLetter first = letter("first", 1);
    KeptLetter again = letter("second", 2, "In-Reply-To: <first@example.org>");
    KeptLetter copy = new KeptLetter("copy", again.letter());
    assertThat(before(again, first, again, copy)).containsExactly("first");
  }

  @Test
  void aLongThreadIsFollowedToItsBeginning() throws IOException {
    KeptLetter[] all = new KeptLetter[2000];
    all[0] = letter("l0", 0);
    for (int i = 1; i < all.length; i++) {
      all[i] = letter("l" + i, 0, "In-Reply-To: <l" + (i - 1) + "@example.org>");
    }
    assertThat(before(all[all.length - 1], all)).hasSize(all.length - 1).startsWith("l0", "l1");
  }
}
