package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.LogWriter.Outcome;
import limberboard.boat.LogWriter.Refused;
import limberboard.boat.LogWriter.Written;
import limberboard.library.file.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogWriterTest {
  private static final LogEntry HOISTS =
      new LogEntry(
          LocalDate.of(2026, 5, 20),
          "reading",
          OptionalDouble.of(356.5),
          Map.of("hoists", 12),
          "a note, with a comma",
          Optional.empty(),
          0);

  @TempDir Path folder;
  private Path log;
  private LogWriter book;

  @BeforeEach
  void workspace() throws IOException {
    Files.createDirectories(folder.resolve("articles"));
    log = folder.resolve("boats/knot/log.csv");
    Files.createDirectories(log.getParent());
    book = new LogWriter(new WorkspaceFolders(folder));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "date,work,engine-hours,note\n2025-04-12,launched,,\n",
        "date,work,engine-hours,note\r\n2025-04-12,launched,,\r\n",
        "date,work,engine-hours,note\n2025-04-12,launched,,no end of line",
        "date,work,engine-hours,note,hoists\n2025-04-12,launched,,,3\n",
        "date,work,engine-hours,note\n2025-04-12,launched,,\nnot a line\n",
        "date,work,engine-hours,note\n"
      })
  void whatWasWrittenIsTakenOutToTheLetter(String before) throws IOException {
    Files.writeString(log, before);
    Written written = (Written) book.add("knot", HOISTS);
    assertThat(Files.readString(log)).isNotEqualTo(before).contains("2026-05-20").contains("356.5");
    assertThat(book.undo(written.change())).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log)).isEqualTo(before);
  }

  @Test
  void aLogThatWasNotThereIsGoneAgain() throws IOException {
    Written written = (Written) book.add("knot", HOISTS);
    assertThat(log).exists();
    assertThat(book.undo(written.change())).isInstanceOf(LogWriter.Written.class);
    assertThat(log).doesNotExist();
  }

  @Test
  void whatOthersWroteMeanwhileStays() throws IOException {
    Files.writeString(log, "date,work,engine-hours,note\n");
    Written written = (Written) book.add("knot", HOISTS);
    Files.writeString(log, Files.readString(log) + "2026-05-21,hauled-out,,,\n");
    assertThat(book.undo(written.change())).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log))
        .contains("2026-05-21,hauled-out")
        .doesNotContain("2026-05-20");
  }

  @Test
  void aLineThatIsGoneAlreadyIsSaidAndNothingIsChanged() throws IOException {
    String before = "date,work,engine-hours,note\n";
    Files.writeString(log, before);
    Written written = (Written) book.add("knot", HOISTS);
    Files.writeString(log, before + "2026-05-21,hauled-out,,\n");
    assertThat(((LogWriter.Refused) book.undo(written.change())).problem().wrong())
        .contains("no line");
    assertThat(Files.readString(log)).isEqualTo(before + "2026-05-21,hauled-out,,\n");
  }

  @Test
  void aBrokenLogIsLeftAloneWithTheReason() throws IOException {
    String broken = "date,work,engine-hours,note\n2025-04-12,launched,,\"never closed\n";
    Files.writeString(log, broken);
    Outcome outcome = book.add("knot", HOISTS);
    assertThat(outcome).isInstanceOf(Refused.class);
    assertThat(((Refused) outcome).problem().wrong()).contains("cannot be read to its end");
    assertThat(Files.readString(log)).isEqualTo(broken);
  }

  private static final String TWICE =
      "date,work,engine-hours,note\r\n"
          + "2025-04-12,launched,,\r\n"
          + "2025-05-01,mend,,\" odd  spaces \"\r\n"
          + "\r\n"
          + "2025-05-01,mend,,odd  spaces\r\n"
          + "2025-06-01,mend,,\"two\r\nlines\"\r\n";

  private static LogEntry mend(int month, String note, int line) {
    return new LogEntry(
        LocalDate.of(2025, month, 1),
        "mend",
        OptionalDouble.empty(),
        Map.of(),
        note,
        Optional.empty(),
        line);
  }

  private static LogChange written(Outcome outcome) {
    return ((Written) outcome).change();
  }

  @Test
  void severalEntriesAreWrittenTogetherAndSayWhereTheyStand() throws IOException {
    Files.writeString(log, TWICE);
    LogChange change = written(book.add("knot", List.of(mend(7, "a", 0), mend(8, "b\nc", 0))));
    assertThat(Files.readString(log))
        .isEqualTo(TWICE + "2025-07-01,mend,,a\r\n2025-08-01,mend,,\"b\r\nc\"\r\n");
    assertThat(change.put()).containsExactly(mend(7, "a", 8), mend(8, "b\nc", 10));
    book.undo(change);
    assertThat(Files.readString(log)).isEqualTo(TWICE);
  }

  @Test
  void ofEqualLinesTheOneOnTheEntrysLineIsMeantOtherwiseTheLast() throws IOException {
    Files.writeString(log, TWICE);
    LogChange first = written(book.remove("knot", mend(5, "odd  spaces", 3)));
    assertThat(Files.readString(log)).doesNotContain("\" odd").contains("\r\n\r\n2025-05-01");
    book.undo(first);
    assertThat(Files.readString(log)).isEqualTo(TWICE);
    book.remove("knot", mend(5, "odd  spaces", 0));
    assertThat(Files.readString(log)).contains("\" odd").doesNotContain(",odd");
  }

  @Test
  void aLineIsCorrectedInItsPlaceTakenBackAndMadeAgain() throws IOException {
    Files.writeString(log, TWICE);
    LogChange change =
        written(book.replace("knot", mend(6, "two\nlines", 0), mend(6, "one line", 0)));
    String corrected = TWICE.replace("\"two\r\nlines\"", "one line");
    assertThat(Files.readString(log)).isEqualTo(corrected);
    LogChange back = written(book.undo(change));
    assertThat(Files.readString(log)).isEqualTo(TWICE);
    book.redo(change);
    assertThat(Files.readString(log)).isEqualTo(corrected);
    book.undo(change);
    book.undo(back);
    assertThat(Files.readString(log)).isEqualTo(corrected);
  }

  @Test
  void aCorrectionIsTakenBackAloneWhenOthersHaveWritten() throws IOException {
    Files.writeString(log, TWICE);
    LogChange change = written(book.replace("knot", mend(5, "odd  spaces", 3), mend(5, "even", 0)));
    book.add("knot", mend(9, "others", 0));
    book.undo(change);
    assertThat(Files.readString(log)).isEqualTo(TWICE + "2025-09-01,mend,,others\r\n");
  }

  @Test
  void aLineTakenOutComesBackWithItsLettersWhenOthersHaveWritten() throws IOException {
    Files.writeString(log, TWICE);
    LogChange change = written(book.remove("knot", mend(5, "odd  spaces", 3)));
    book.add("knot", mend(9, "others", 0));
    book.undo(change);
    assertThat(Files.readString(log)).endsWith("others\r\n2025-05-01,mend,,\" odd  spaces \"\r\n");
  }

  @Test
  void aLineThatIsTooLongStaysBrokenBecauseNoColumnIsAddedThatItWouldFill() throws IOException {
    String broken = "date,work,engine-hours,note\n2025-04-12,launched,,a note, 5\n";
    Files.writeString(log, broken);
    Refused refused = (Refused) book.add("knot", HOISTS);
    assertThat(refused.problem().line()).isEqualTo(2);
    assertThat(Files.readString(log)).isEqualTo(broken);
    assertThat(book.add("knot", mend(7, "no new column", 0))).isInstanceOf(Written.class);
  }

  @ParameterizedTest
  @ValueSource(doubles = {530.1234567, 1e-320, 1e9, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void hoursThatWouldNotBeReadAreNotWritten(double hours) throws IOException {
    Files.writeString(log, TWICE);
    LogEntry entry =
        new LogEntry(
            LocalDate.of(2026, 5, 20),
            "reading",
            OptionalDouble.of(hours),
            Map.of(),
            "",
            Optional.empty(),
            0);
    assertThat(((Refused) book.add("knot", entry)).problem().key()).isEqualTo("engine-hours");
    assertThat(Files.readString(log)).isEqualTo(TWICE);
  }

  @Test
  void aLogThatWouldBecomeTooLongToBeReadIsLeftAlone() throws IOException {
    String line = "2025-04-12,launched,,\n";
    String full =
        "date,work,engine-hours,note\n" + line.repeat(LogWriter.LARGEST / line.length() - 2);
    Files.writeString(log, full);
    Outcome outcome = book.add("knot", List.of(mend(1, "x".repeat(60), 0)));
    assertThat(((Refused) outcome).problem().wrong()).contains("longer than the 8000000 bytes");
    assertThat(Files.readString(log)).isEqualTo(full);
  }

  @Test
  void withoutTheBoatsFolderNothingIsMade() {
    Refused refused = (Refused) book.add("gone", HOISTS);
    assertThat(refused.problem().wrong()).contains("folder is not there");
    assertThat(folder.resolve("boats/gone")).doesNotExist();
  }
}
