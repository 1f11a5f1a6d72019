package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.boat.HowKnown.From;
import limberboard.boat.HowKnown.To;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The day a boat was bought, and log lines that say how something is known. */
class BoughtBoatTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 29);
  private static final String FILE =
      "name: Knot # as painted\nmodel: plover-20\nhull: 17\nbuilt: 2014\n";

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
  }

  private Workspace read(String file) throws IOException {
    workspace.write("boats/knot/boat.yaml", file);
    return read();
  }

  private Workspace read() throws IOException {
    return new WorkspaceReader(workspace.folders()).read();
  }

  private List<Problem> questions(Workspace read) {
    Boat knot = read.boat("knot").orElseThrow();
    return new BoatQuestions(workspace.folders(), TODAY).of(read, knot);
  }

  @Test
  void theDayIsReadAndWrittenBesideWhatIsThere() throws IOException {
    Workspace plain = read(FILE);
    Boat knot = plain.boat("knot").orElseThrow();
    assertThat(knot.bought()).isEmpty();
    LocalDate day = LocalDate.of(2026, 10, 3);
    assertThat(new BoatWriter(workspace.folders()).save(plain.library(), knot, knot.bought(day)))
        .isEqualTo(new BoatWriter.Saved(knot.bought(day)));
    assertThat(Files.readString(folder.resolve("boats/knot/boat.yaml")))
        .isEqualTo(FILE + "bought: 2026-10-03\n");
    assertThat(read().problems()).isEmpty();
    assertThat(read().boat("knot")).contains(knot.bought(day));
    assertThat(questions(read())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "2026-02-30, write",
    "'\"last autumn\"', write",
    "2013-12-31, such as 2014-10-03",
    "2027-01-05, once she is yours"
  })
  void aDayThatCannotBeIsSaidWithFileLineAndWhatWouldBeRight(String day, String right)
      throws IOException {
    List<Problem> problems = questions(read(FILE + "bought: " + day + "\n"));
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).file()).isEqualTo("boats/knot/boat.yaml");
    assertThat(problems.get(0).line()).isEqualTo(5);
    assertThat(problems.get(0).key()).isEqualTo("bought");
    assertThat(problems.get(0).right()).contains(right);
  }

  @Test
  void aDayInTheFutureOrBeforeShesBuiltLeavesTheBoatUsable() throws IOException {
    assertThat(read(FILE + "bought: 2013-12-31\n").boat("knot").orElseThrow().bought()).isEmpty();
    assertThat(read(FILE + "bought: 2014-01-01\n").boat("knot").orElseThrow().bought())
        .contains(LocalDate.of(2014, 1, 1));
  }

  @ParameterizedTest
  @EnumSource(From.class)
  void howItIsKnownIsWrittenAndReadAgainAndTakenBackToTheLetter(From from) throws IOException {
    read(FILE);
    String before = "date,work,engine-hours,note\n# a comment\n2025-04-12,launched,,\n";
    workspace.write("boats/knot/log.csv", before);
    LogWriter writer = new LogWriter(workspace.folders());
    for (To to : To.values()) {
      LogEntry entry = LogEntry.known(LocalDate.of(2024, 1, 1), "launched", new HowKnown(from, to));
      LogWriter.Outcome outcome = writer.add("knot", List.of(entry));
      assertThat(outcome).isInstanceOf(LogWriter.Written.class);
      assertThat(read().boat("knot").orElseThrow().log()).anyMatch(each -> each.saysTheSame(entry));
      writer.undo(((LogWriter.Written) outcome).change());
      assertThat(Files.readString(folder.resolve("boats/knot/log.csv"))).isEqualTo(before);
    }
  }

  @Test
  void onlyAsMuchOfADayIsToldAsIsKnown() {
    LocalDate day = LocalDate.of(2024, 5, 1);
    assertThat(LogEntry.known(day, "launched", new HowKnown(From.BILL)).day())
        .isEqualTo("1 May 2024");
    assertThat(LogEntry.known(day, "launched", new HowKnown(From.SAID, To.MONTH)).day())
        .isEqualTo("about May 2024");
    assertThat(LogEntry.known(day, "launched", new HowKnown(From.SAID, To.YEAR)).day())
        .isEqualTo("about 2024");
  }

  @ParameterizedTest
  @ValueSource(strings = {"guessed", "said week", "said year month", "3"})
  void anotherWordIsAProblemWithItsLineAndTheLineIsLeftOut(String word) throws IOException {
    read(FILE);
    workspace.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note,known-by\n2025-04-12,launched,,,\n2024-01-01,launched,,,"
            + word
            + "\n");
    List<Problem> problems = questions(read());
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).line()).isEqualTo(3);
    assertThat(problems.get(0).key()).isEqualTo("known-by");
    assertThat(problems.get(0).right()).contains("survey, bill, said, seen");
    assertThat(read().boat("knot").orElseThrow().log())
        .extracting(LogEntry::known)
        .containsExactly(Optional.empty());
  }
}
