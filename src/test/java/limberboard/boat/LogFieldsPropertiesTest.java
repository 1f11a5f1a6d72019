package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.LogEvents;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** What is written into a log is read from it, and what would not be read is not written. */
class LogFieldsPropertiesTest {
  private static final List<String> HEADERS =
      List.of(
          "date,work,engine-hours,note",
          "note,hoists,date,engine-hours,work",
          "date,work,\"engine-hours\",note,of,nights");
  private static final List<String> LINES =
      List.of(
          "",
          "2025-01-01,mend, 12 ,\" odd \"",
          "broken",
          "2025-01-01,mend,,a, b, c, 5, 6",
          "2025-01-01,mend,,\"two\nlines, \"\"quoted\"\"\"",
          "2025-13-01,mend,,");

  private static String note(Random random) {
    String[] parts = {"a", ",", "\"", "\n", "\r\n", " ", "\t", "é", "🛶", ";", "'", "#", "=", "\\"};
    StringBuilder note = new StringBuilder();
    for (int i = random.nextInt(12); i > 0; i--) {
      note.append(parts[random.nextInt(parts.length)]);
    }
    return note.toString();
  }

  private static LogEntry entry(Random random) {
    double[] hours = {0, 0.5, 356.123456, 9999999, 1234567.654321, random.nextDouble() * 1e6};
    double reading = hours[random.nextInt(hours.length)];
    boolean again = random.nextInt(4) == 0;
    return new LogEntry(
        LocalDate.of(1900 + random.nextInt(301), 1 + random.nextInt(12), 1 + random.nextInt(28)),
        again ? LogEvents.LOOKED_AGAIN : "mend",
        random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(reading),
        random.nextBoolean() ? Map.of() : Map.of("hoists", random.nextInt(200_000_000)),
        note(random),
        again ? Optional.of("mend") : Optional.empty(),
        0);
  }

  @Property(tries = 500, seed = "4180", edgeCases = EdgeCasesMode.NONE)
  void anEntryIsReadAsItWasWrittenOrRefusedAndAllElseStays(@ForAll @LongRange(min = 0) long seed)
      throws IOException {
    Random random = new Random(seed);
    String end = random.nextBoolean() ? "\n" : "\r\n";
    List<String> lines = new ArrayList<>(List.of(HEADERS.get(random.nextInt(HEADERS.size()))));
    for (int i = random.nextInt(5); i > 0; i--) {
      lines.add(LINES.get(random.nextInt(LINES.size())).replace("\n", end));
    }
    String mark = random.nextInt(4) == 0 ? "\uFEFF" : "";
    String before = mark + String.join(end, lines) + (random.nextBoolean() ? end : "");
    LogEntry entry = entry(random);
    try (FileSystem disk = Jimfs.newFileSystem(Configuration.unix())) {
      WorkspaceFolders folders = new WorkspaceFolders(disk.getPath("/work"));
      Path log = folders.boats().resolve("knot/log.csv");
      Files.createDirectories(log.getParent());
      Files.writeString(log, before);
      LogWriter book = new LogWriter(folders);
      if (!(book.add("knot", entry) instanceof LogWriter.Written written)) {
        assertThat(Files.readString(log)).isEqualTo(before);
        return;
      }
      LogText after = LogText.read(Files.readString(log));
      LogEntry read = after.entry(after.lines().get(after.lines().size() - 1)).orElseThrow();
      assertThat(read.date()).isEqualTo(entry.date());
      assertThat(read.work()).isEqualTo(entry.work());
      assertThat(read.engineHours()).isEqualTo(entry.engineHours());
      assertThat(read.uses()).isEqualTo(entry.uses());
      assertThat(read.note()).isEqualTo(LogNote.plain(entry.note()));
      assertThat(read.of()).isEqualTo(entry.of());
      LogText was = LogText.read(before);
      List<String> others = after.letters().subList(0, after.lines().size() - 1);
      assertThat(others).isEqualTo(was.letters());
      for (int i = 0; i < was.lines().size(); i++) {
        assertThat(after.entry(after.lines().get(i)).map(each -> each.on(0)))
            .isEqualTo(was.entry(was.lines().get(i)).map(each -> each.on(0)));
      }
      assertThat(book.undo(written.change())).isInstanceOf(LogWriter.Written.class);
      assertThat(Files.readString(log)).isEqualTo(before);
    }
  }

  @Property(tries = 500, seed = "4181", edgeCases = EdgeCasesMode.NONE)
  void hoursThatAreReadAreWrittenSoThatTheyAreReadAgain(@ForAll @LongRange(min = 0) long seed) {
    Random random = new Random(seed);
    String text =
        Long.toString(Math.abs(random.nextLong()) % 100_000_000L)
            + (random.nextBoolean()
                ? "." + Long.toString(Math.abs(random.nextLong()) % 10_000_000L)
                : "");
    Optional<Double> hours = LogHours.read(text).good();
    assertThat(hours.isPresent()).isEqualTo(text.matches("[0-9]{1,7}(\\.[0-9]{1,6})?"));
    hours.ifPresent(
        value -> assertThat(LogHours.read(LogHours.write(value)).good()).contains(value));
  }
}
