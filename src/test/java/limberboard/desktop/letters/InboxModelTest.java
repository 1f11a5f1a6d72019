package limberboard.desktop.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import limberboard.desktop.support.Steps;
import limberboard.letters.inbox.LetterNote;
import limberboard.letters.inbox.LetterState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InboxModelTest {
  @TempDir Path folder;

  private SmallLetters open() {
    SmallLetters letters = new SmallLetters(folder, Runnable::run).usual().read();
    letters.inbox.look();
    return letters;
  }

  @Test
  void urgentLettersComeFirstThenTheNewest() {
    SmallLetters letters = open();
    assertThat(letters.names()).containsExactly("gas.eml", "booking.eml", "wet.eml");
    assertThat(letters.row("gas.eml").spoken()).startsWith("Urgent: gas can be smelt. Cleo Marsh");
    assertThat(letters.inbox.urgent()).isEqualTo(1);
    assertThat(letters.inbox.progress()).isEmpty();
  }

  @Test
  void aRowSaysWhoWhichBoatAndWhat() {
    InboxRow row = open().row("wet.eml");
    assertThat(row.who()).isEqualTo("Ada Lind");
    assertThat(row.day()).isEqualTo("18 May 2026");
    assertThat(row.about()).isEqualTo("Knot: Water in the locker");
    assertThat(row.stateWord()).isEqualTo("New");
    assertThat(row.line()).isEqualTo("18 May 2026. Wet locker on Knot");
  }

  @Test
  void nothingIsReadBeforeItIsLookedAt() {
    SmallLetters letters = new SmallLetters(folder, Runnable::run).usual().read();
    assertThat(letters.begun).isEmpty();
    letters.inbox.lookAgain();
    assertThat(letters.begun).isEmpty();
  }

  @Test
  void answeredLettersAreNotToDoAndNotUrgent() {
    SmallLetters letters = open();
    letters.inbox.noted(
        "gas.eml", LetterNote.NEW.in(LetterState.ANSWERED, LocalDate.of(2026, 5, 20)));
    assertThat(letters.names()).containsExactly("booking.eml", "wet.eml");
    letters.inbox.filter(InboxFilter.ALL);
    assertThat(letters.names()).containsExactly("booking.eml", "wet.eml", "gas.eml");
    letters.inbox.filter(InboxFilter.DONE);
    assertThat(letters.names()).containsExactly("gas.eml");
    letters.inbox.filter(InboxFilter.URGENT);
    assertThat(letters.names()).isEmpty();
  }

  @Test
  void wordsFindLetters() {
    SmallLetters letters = open();
    letters.inbox.words("crane");
    assertThat(letters.names()).containsExactly("booking.eml");
    letters.inbox.words("KNOT");
    assertThat(letters.names()).containsExactly("gas.eml", "wet.eml");
  }

  @Test
  void badLettersAreSaidAtTheirRowsAndStopNothing() throws IOException {
    SmallLetters letters = new SmallLetters(folder, Runnable::run).usual().read();
    byte[] noise = new byte[3_000];
    Arrays.fill(noise, (byte) 0xfe);
    letters.write("noise.eml", noise);
    letters.write("empty.eml", "");
    letters.write("bad.eml", SmallLetters.WET).write("bad.eml.state", "state: nobody\n");
    letters.write("bad.eml.yaml", new byte[] {(byte) 0xff});
    Files.createSymbolicLink(letters.file("gone.eml"), letters.file("nowhere.eml"));
    StringBuilder large = new StringBuilder(SmallLetters.WET.length() + 31_000_000);
    large.append(SmallLetters.WET.replace("Ada", "Large"));
    while (large.length() < 31_000_000) {
      large.append("The locker is wet and it goes on and on, line after line of it.\n");
    }
    letters.write("large.eml", large.toString());
    letters.inbox.look();
    assertThat(letters.inbox.progress()).isEmpty();
    assertThat(letters.names()).contains("wet.eml", "gas.eml", "booking.eml");
    assertThat(letters.row("gone.eml").line()).contains("It cannot be read");
    assertThat(letters.row("bad.eml").line())
        .contains("What is noted of it cannot be used")
        .contains("is not a state of a letter");
    assertThat(letters.row("large.eml").who()).isEqualTo("Large Lind");
    assertThat(letters.row("large.eml").about()).contains("Knot");
    assertThat(letters.row("empty.eml").summary()).isPresent();
    assertThat(letters.row("noise.eml").summary()).isPresent();
    assertThat(letters.notices.current()).isEmpty();
  }

  @Test
  void tenThousandLettersAreShownBeforeTheyAreRecognisedAndTheNewestAreFirst() {
    Steps steps = new Steps();
    SmallLetters letters = new SmallLetters(folder, steps).read();
    for (int i = 0; i < 10_000; i++) {
      String number = String.format(Locale.ROOT, "%05d", i);
      letters.write(
          "l" + number + ".eml",
          "From: owner-"
              + number
              + "@example.org\nDate: "
              + (1 + i % 28)
              + " Jan 20"
              + String.format(Locale.ROOT, "%02d", 10 + i % 16)
              + " 08:00:00 +0000\nSubject: locker\n\nThe locker of Knot is wet.\n");
    }
    letters.inbox.look();
    steps.next();
    assertThat(letters.inbox.shown()).hasSize(10_000);
    assertThat(letters.inbox.progress()).isEqualTo("Reading: 0 of 10000 letters.");
    while (letters.inbox.progress().startsWith("Reading")) {
      steps.next();
    }
    assertThat(letters.inbox.shown().get(0).when().getYear()).isEqualTo(2025);
    assertThat(letters.begun).doesNotContain("recognising a letter");
    steps.next();
    assertThat(letters.begun).contains("recognising a letter");
    long known = letters.inbox.shown().stream().filter(row -> row.summary().isPresent()).count();
    assertThat(known).isBetween(1L, 200L);
    assertThat(letters.inbox.shown().subList(0, (int) known))
        .allMatch(row -> row.summary().isPresent());
    assertThat(letters.inbox.progress()).startsWith("Recognising, the newest first: " + known);
    letters.inbox.choose("l00000.eml");
    steps.next();
    steps.next();
    assertThat(letters.model.letter()).isPresent();
  }

  @Test
  void anotherBoatInTheStripReadsNothingAgain() {
    SmallLetters letters = open();
    int before = letters.begun.size();
    letters.session.choose(java.util.Optional.of("stint"));
    assertThat(letters.begun).hasSize(before);
  }

  @Test
  void whatSomebodyElseNotesIsSeenWhenLookedAgain() {
    SmallLetters letters = open();
    letters.reading.change(
        "booking.eml", note -> note.in(LetterState.CLOSED, LocalDate.of(2026, 5, 20)));
    letters.reading.change(
        "wet.eml", note -> note.saying(note.said().of(java.util.Optional.of("stint"))));
    letters.inbox.lookAgain();
    assertThat(letters.names()).containsExactly("gas.eml", "wet.eml");
    assertThat(letters.row("wet.eml").about()).startsWith("Stint");
  }

  @Test
  void aLetterThatComesIsFoundWhenLookedAgain() {
    SmallLetters letters = open();
    letters.write("new.eml", SmallLetters.WET.replace("18 May", "20 May"));
    letters.inbox.lookAgain();
    assertThat(letters.names()).containsExactly("gas.eml", "new.eml", "booking.eml", "wet.eml");
  }
}
