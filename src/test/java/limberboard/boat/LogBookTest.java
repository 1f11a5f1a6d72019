package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.LogBook.Outcome;
import limberboard.boat.LogBook.Refused;
import limberboard.boat.LogBook.Written;
import limberboard.library.WorkspaceFolders;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LogBookTest {
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
  private LogBook book;

  @BeforeEach
  void workspace() throws IOException {
    Files.createDirectories(folder.resolve("articles"));
    log = folder.resolve("boats/knot/log.csv");
    Files.createDirectories(log.getParent());
    book = new LogBook(new WorkspaceFolders(folder));
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
    assertThat(book.undo(written)).isEmpty();
    assertThat(Files.readString(log)).isEqualTo(before);
  }

  @Test
  void aLogThatWasNotThereIsGoneAgain() throws IOException {
    Written written = (Written) book.add("knot", HOISTS);
    assertThat(log).exists();
    assertThat(book.undo(written)).isEmpty();
    assertThat(log).doesNotExist();
  }

  @Test
  void whatOthersWroteMeanwhileStays() throws IOException {
    Files.writeString(log, "date,work,engine-hours,note\n");
    Written written = (Written) book.add("knot", HOISTS);
    Files.writeString(log, Files.readString(log) + "2026-05-21,hauled-out,,,\n");
    assertThat(book.undo(written)).isEmpty();
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
    assertThat(book.undo(written).orElseThrow().wrong()).contains("no line");
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
}
