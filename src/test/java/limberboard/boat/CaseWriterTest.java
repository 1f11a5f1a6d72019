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
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import limberboard.boat.CaseWriter.Refused;
import limberboard.boat.CaseWriter.Written;
import limberboard.library.Library;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cases are written one file each, read again as they were, and none is ever overwritten. */
class CaseWriterTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 30);

  @TempDir Path folder;
  private TestWorkspace workspace;
  private CaseWriter writer;
  private Library library;

  @BeforeEach
  void prepare() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "articles/symptoms/wet.md",
        """
        ---
        title: Wet
        zones: [cabin]
        causes: [{id: seal, title: Seal, weight: 1, mend: mend}]
        checks:
          - {id: taste, ask: Salt, how: Taste., minutes: 1, answers: [yes, no], finds: {yes: {seal: often}}}
          - {id: look, ask: Wet, how: Look., minutes: 1, answers: [wet, dry], finds: {wet: {seal: often}}}
        ---
        """);
    writer = new CaseWriter(workspace.folders());
    library = workspace.library();
  }

  private Workspace read() throws IOException {
    return new WorkspaceReader(workspace.folders()).read();
  }

  private List<Problem> caseProblems() throws IOException {
    return read().problems().stream().filter(each -> each.file().contains("cases/")).toList();
  }

  private static RecordedCase begun() {
    return new RecordedCase(
        "",
        "wet",
        Optional.empty(),
        DAY,
        new CaseBoat(
            "plover-20",
            OptionalInt.of(2014),
            Map.of("seal", "seal-lip"),
            Optional.of(Water.FRESH),
            Optional.of(Use.CHARTER),
            Optional.empty()),
        Map.of("taste", "yes"),
        List.of("look"),
        CaseEnd.OPEN,
        "wet: \"after rain\"");
  }

  private static RecordedCase mended(RecordedCase open) {
    return open.ended(
        Optional.of("seal"),
        new CaseEnd(
            Optional.of(CaseOutcome.MENDED),
            "",
            Optional.of("mend"),
            OptionalDouble.of(95),
            OptionalDouble.of(40.5),
            OptionalDouble.of(12)));
  }

  private Written created(RecordedCase wanted) {
    CaseWriter.Outcome outcome = writer.create(library, wanted);
    assertThat(outcome).isInstanceOf(Written.class);
    return (Written) outcome;
  }

  @Test
  void aCaseIsReadAgainAsItWasWritten() throws IOException {
    assertThat(created(mended(begun())).file()).isEqualTo("boats/cases/2026-05-30-wet.yaml");
    assertThat(caseProblems()).isEmpty();
    assertThat(read().cases()).containsExactly(mended(begun()).named("2026-05-30-wet"));
    try (var files = Files.list(folder.resolve("boats/cases"))) {
      assertThat(files.filter(file -> !file.getFileName().toString().startsWith(".")))
          .as("nothing temporary stays")
          .hasSize(1);
    }
  }

  @Test
  void aSecondOneOfTheDayGetsANumberAndTheFirstStays() throws IOException {
    Path first = folder.resolve(created(begun()).file());
    String text = Files.readString(first);
    assertThat(created(mended(begun())).recorded().id()).isEqualTo("2026-05-30-wet-2");
    assertThat(Files.readString(first)).isEqualTo(text);
    assertThat(read().cases())
        .extracting(RecordedCase::isOpen)
        .containsExactlyInAnyOrder(true, false);
  }

  @Test
  void manyAtOnceAllGetFilesOfTheirOwn() throws IOException {
    Set<String> ids =
        IntStream.range(0, 24)
            .parallel()
            .mapToObj(i -> new CaseWriter(workspace.folders()).create(library, begun()))
            .map(outcome -> ((Written) outcome).recorded().id())
            .collect(Collectors.toSet());
    assertThat(ids).hasSize(24);
    assertThat(read().cases()).hasSize(24);
  }

  @Test
  void completingTouchesOnlyWhatIsNew() throws IOException {
    Path file =
        workspace.write(
            "boats/cases/old.yaml",
            """
            # told on the quay
            symptom: wet
            date: 2026-05-30   # a Saturday
            model: plover-20
            answers:
              taste: yes   # he swore
            outcome: open
            kept-by: me
            """);
    CaseWriter.Outcome outcome =
        writer.change(
            library,
            "old",
            open -> mended(open).answered(Map.of("taste", "yes", "look", "dry"), List.of()));
    assertThat(outcome).as("%s", outcome).isInstanceOf(Refused.class);
    Files.writeString(file, Files.readString(file).replace("kept-by: me\n", ""));
    outcome =
        writer.change(
            library,
            "old",
            open -> mended(open).answered(Map.of("taste", "yes", "look", "dry"), List.of()));
    assertThat(outcome).as("%s", outcome).isInstanceOf(Written.class);
    assertThat(Files.readString(file))
        .isEqualTo(
            """
            # told on the quay
            symptom: wet
            cause: seal
            date: 2026-05-30   # a Saturday
            model: plover-20
            answers:
              taste: yes   # he swore
              look: dry
            mend: mend
            minutes: 95
            mend-minutes: 40.5
            cost: 12
            outcome: mended
            """);
    assertThat(writer.undo((Written) outcome)).isInstanceOf(Written.class);
    assertThat(Files.readString(file)).contains("outcome: open").doesNotContain("minutes");
  }

  @Test
  void aNewCaseIsTakenBackByTakingItsFileAway() throws IOException {
    Written written = created(begun());
    assertThat(writer.undo(written)).isInstanceOf(Written.class);
    assertThat(read().cases()).isEmpty();
    Written again = created(begun());
    Files.writeString(folder.resolve(again.file()), "symptom: wet\n");
    assertThat(writer.undo(again)).as("somebody else wrote into it").isInstanceOf(Refused.class);
    assertThat(folder.resolve(again.file())).hasContent("symptom: wet\n");
  }

  @Test
  void whatCouldNotBeReadIsNotWritten() throws IOException {
    RecordedCase noCause = begun().ended(Optional.of("rain"), CaseEnd.UNKNOWN);
    assertThat(writer.create(library, noCause)).isInstanceOf(Refused.class);
    RecordedCase outside =
        new RecordedCase(
            "", "../../wet", "seal", DAY, "plover-20", OptionalInt.empty(), Map.of(), "");
    assertThat(writer.create(library, outside)).isInstanceOf(Refused.class);
    assertThat(read().cases()).isEmpty();
    workspace.write("boats/cases/broken.yaml", "symptom: [wet\n");
    assertThat(writer.change(library, "broken", CaseWriterTest::mended))
        .isInstanceOf(Refused.class);
    assertThat(writer.change(library, "../knot/boat", CaseWriterTest::mended))
        .isInstanceOf(Refused.class);
    assertThat(writer.change(library, "not-there", CaseWriterTest::mended))
        .isInstanceOf(Refused.class);
    assertThat(folder.resolve("boats/cases/broken.yaml")).hasContent("symptom: [wet\n");
  }

  @Test
  void whatACaseHasWrongIsToldWithItsLine() throws IOException {
    workspace.write(
        "boats/cases/a.yaml",
        """
        symptom: wet
        date: 2026-05-30
        model: plover-20
        equipment: {seal: seal-of-wax}
        answers: {taste: yes}
        cant-tell: [taste, smell]
        mend: pray
        minutes: -5
        """);
    assertThat(caseProblems())
        .extracting(each -> each.line() + " " + each.key() + " " + each.wrong())
        .containsExactlyInAnyOrder(
            "4 equipment.seal \"seal-of-wax\" is not among its choices",
            "6 cant-tell \"taste\" has an answer as well",
            "6 cant-tell the symptom has no check \"smell\"",
            "7 mend there is no procedure \"pray\"",
            "8 minutes is less than 0",
            "1 cause is missing");
    assertThat(read().cases()).isEmpty();
  }

  @Test
  void onlyWhatIsMendedOrHandedOverProvesACause() {
    assertThat(begun().provenCause()).isEmpty();
    assertThat(mended(begun()).provenCause()).contains("seal");
    for (CaseOutcome outcome : CaseOutcome.values()) {
      boolean proves = outcome == CaseOutcome.MENDED || outcome == CaseOutcome.HANDED_OVER;
      assertThat(
              begun()
                  .ended(Optional.of("seal"), CaseEnd.UNKNOWN.with(outcome))
                  .provenCause()
                  .isPresent())
          .isEqualTo(proves);
    }
  }

  @Test
  void theBoatsFactsMakeABoatAgain() throws IOException {
    workspace.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\nwater: fresh\n");
    Boat knot = read().boat("knot").orElseThrow();
    CaseBoat facts = CaseBoat.of(knot, false);
    assertThat(facts.id()).isEmpty();
    assertThat(CaseBoat.of(knot, true).id()).contains("knot");
    Boat again = facts.boat(library).orElseThrow();
    assertThat(again.equipment()).isEqualTo(knot.equipment());
    assertThat(again.built()).isEqualTo(knot.built());
    assertThat(again.water()).isEqualTo(knot.water());
    assertThat(again.name()).doesNotContain(knot.name());
  }
}
