package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log is written line by line, and nothing else in it is touched. */
class LogLinesTest {
  private static final String HEADER = "date,work,engine-hours,note\n";
  private static final LogEntry OIL =
      new LogEntry(
          LocalDate.of(2026, 3, 28),
          "change-engine-oil",
          OptionalDouble.of(490.5),
          Map.of(),
          "black, but \"thin\"",
          Optional.empty(),
          0);

  @TempDir Path folder;
  private Path log;
  private LogWriter writer;

  @BeforeEach
  void prepare() throws IOException {
    Files.createDirectories(folder.resolve("articles"));
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    log = folders.boats().resolve("knot").resolve("log.csv");
    Files.createDirectories(log.getParent());
    writer = new LogWriter(folders);
  }

  @Test
  void anEntryIsAddedAtTheEndQuotedAsRfc4180Asks() throws IOException {
    Files.writeString(
        log, HEADER + "2026-03-01,grease-hinges,,odd  spaces ,\n# not a line of ours");
    assertThat(writer.add("knot", OIL)).isInstanceOf(LogWriter.Written.class);
    assertThat(log)
        .hasContent(
            HEADER
                + "2026-03-01,grease-hinges,,odd  spaces ,\n# not a line of ours\n"
                + "2026-03-28,change-engine-oil,490.5,\"black, but \"\"thin\"\"\"\n");
  }

  @Test
  void aNewLogIsMadeWithItsHeader() throws IOException {
    assertThat(writer.add("knot", OIL)).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log))
        .isEqualTo(
            "date,work,engine-hours,note\r\n"
                + "2026-03-28,change-engine-oil,490.5,\"black, but \"\"thin\"\"\"\r\n");
  }

  @Test
  void takingAnEntryOutLeavesTheFileAsItWasToTheLetter() throws IOException {
    String before = HEADER + "2026-03-28,change-engine-oil,490.5,other\n2026-03-01,x,,\"a\nb\"\n";
    Files.writeString(log, before);
    writer.add("knot", OIL);
    assertThat(Files.readString(log)).isNotEqualTo(before);
    assertThat(writer.remove("knot", OIL)).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log)).isEqualTo(before);
  }

  @Test
  void anEntryInTheMiddleIsTakenOutAlone() throws IOException {
    Files.writeString(log, HEADER + "2026-01-01,a,,\n");
    writer.add("knot", OIL);
    Files.writeString(log, Files.readString(log) + "2026-05-01,b,,\n");
    assertThat(writer.remove("knot", OIL)).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log)).isEqualTo(HEADER + "2026-01-01,a,,\n2026-05-01,b,,\n");
  }

  @Test
  void whatIsNotThereIsSaidAndNothingIsWritten() throws IOException {
    Files.writeString(log, HEADER);
    assertThat(refused(writer.remove("knot", OIL)).wrong()).contains("no line");
    assertThat(Files.readString(log)).isEqualTo(HEADER);
  }

  @Test
  void aColumnIsAddedOnlyWhenAnEntryNeedsIt() throws IOException {
    Files.writeString(log, HEADER + "2026-01-01,a,12,\"x, y\"\nbroken line\n");
    LogEntry hoists =
        new LogEntry(
            LocalDate.of(2026, 6, 1),
            "reading",
            OptionalDouble.empty(),
            Map.of("hoists", 40),
            "",
            Optional.empty(),
            0);
    assertThat(writer.add("knot", hoists)).isInstanceOf(LogWriter.Written.class);
    assertThat(Files.readString(log))
        .isEqualTo(
            "date,work,engine-hours,note,hoists\n"
                + "2026-01-01,a,12,\"x, y\"\nbroken line\n2026-06-01,reading,,,40\n");
  }

  @Test
  void aFileThatCannotBeReadToItsEndIsLeftAlone() throws IOException {
    String open = HEADER + "2026-01-01,a,,\"never closed\n";
    Files.writeString(log, open);
    assertThat(refused(writer.add("knot", OIL)).right()).contains("nothing was");
    assertThat(Files.readString(log)).isEqualTo(open);
  }

  @Test
  void aFileWithOtherColumnsIsLeftAlone() throws IOException {
    Files.writeString(log, "when,what\n2026-01-01,a\n");
    assertThat(refused(writer.add("knot", OIL)).line()).isEqualTo(1);
    assertThat(Files.readString(log)).isEqualTo("when,what\n2026-01-01,a\n");
  }

  private static Problem refused(LogWriter.Outcome outcome) {
    return ((LogWriter.Refused) outcome).problem();
  }
}
