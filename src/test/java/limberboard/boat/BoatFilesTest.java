package limberboard.boat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import limberboard.library.value.Condition;
import limberboard.library.value.Exposure;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoatFilesTest {
  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write(
        "boats/knot/boat.yaml", "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
  }

  private Workspace read() throws IOException {
    return new WorkspaceReader(workspace.folders()).read();
  }

  private Boat knot() throws IOException {
    return read().boat("knot").orElseThrow();
  }

  @Test
  void whatTheFileLeavesOutIsAsTheYardFittedIt() throws IOException {
    assertThat(knot().equipment()).isEqualTo(Map.of("seal", "seal-packed"));
    assertThat(knot().use()).isEqualTo(Use.PRIVATE);
    assertThat(knot().water()).isEqualTo(Water.SALT);
  }

  @Test
  void aBoatWrittenIsTheBoatRead() throws IOException {
    Boat plain = knot();
    Boat changed =
        new Boat(
            "knot",
            "Knot: the \"second\"",
            plain.model(),
            18,
            2014,
            Optional.of(LocalDate.of(2014, 5, 1)),
            Use.CHARTER,
            Water.FRESH,
            Exposure.EXPOSED,
            Map.of("seal", "seal-lip"),
            Optional.of(new Season(MonthDay.of(4, 15), MonthDay.of(10, 15))),
            "A note: with a colon # and a hash\nand a second line",
            plain.log());
    assertThat(new BoatWriter(workspace.folders()).save(read().library(), plain, changed))
        .isEqualTo(new BoatWriter.Saved(changed));
    Workspace after = read();
    assertThat(after.problems()).isEmpty();
    assertThat(after.boat("knot")).contains(changed);
  }

  @Test
  void whatWasFittedLaterIsReadAndWrittenAndIsWhatConditionsSee() throws IOException {
    workspace.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2012\nequipment: {seal: seal-lip}\n");
    Workspace after = read();
    assertThat(after.problems()).isEmpty();
    Boat later = after.boat("knot").orElseThrow();
    assertThat(later.has("seal-lip")).isTrue();
    assertThat(later.has("seal-packed")).isFalse();
    List<String> fitted = List.of("seal-lip");
    Condition lipSeal = new Condition(null, null, null, fitted, null, null, null, null, null, null);
    assertThat(new Fitting(later, LocalDate.of(2026, 5, 1)).judge(lipSeal).fits()).isTrue();
    Boat packed = withEquipment(later, Map.of("seal", "seal-packed"));
    new BoatWriter(workspace.folders()).save(after.library(), later, packed);
    assertThat(read().boat("knot").orElseThrow().equipment()).containsEntry("seal", "seal-packed");
    new BoatWriter(workspace.folders()).save(after.library(), packed, later);
    assertThat(read().problems()).isEmpty();
    assertThat(read().boat("knot")).contains(later);
  }

  private static Boat withEquipment(Boat boat, Map<String, String> equipment) {
    return new Boat(
        boat.id(),
        boat.name(),
        boat.model(),
        boat.hull(),
        boat.built(),
        boat.launched(),
        boat.use(),
        boat.water(),
        boat.exposure(),
        equipment,
        boat.season(),
        boat.note(),
        boat.log());
  }

  @Test
  void aChoiceThatWasNoLongerToBeHadIsReportedAndTheRestIsRead() throws IOException {
    workspace.write(
        "boats/knot/boat.yaml",
        "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2016\nequipment: {seal: seal-packed}\n");
    Workspace after = read();
    assertThat(after.problems())
        .extracting(Problem::toString)
        .containsExactly(
            "boats/knot/boat.yaml:5: equipment.seal: \"seal-packed\" was no longer to be had in"
                + " 2016; choose one of seal-lip");
    assertThat(after.boat("knot").orElseThrow().equipment()).containsEntry("seal", "seal-lip");
  }

  @Test
  void aBoatOfAnUnknownModelIsReported() throws IOException {
    workspace.write("boats/ruff/boat.yaml", "name: Ruff\nmodel: plover-21\nhull: 1\nbuilt: 2014\n");
    Workspace after = read();
    assertThat(after.problems())
        .extracting(Problem::toString)
        .containsExactly(
            "boats/ruff/boat.yaml:2: model: there is no model \"plover-21\";"
                + " did you mean \"plover-20\"?");
    assertThat(after.boat("knot")).isPresent();
    assertThat(after.boat("ruff")).isEmpty();
  }

  @Test
  void aLineWhoseWorkHasABrokenPageIsRightAsItIs() throws IOException {
    workspace.write("articles/procedures/oil-hinge.md", "---\ntitle: [\n---\n");
    workspace.write("boats/knot/log.csv", "date,work,engine-hours,note\n2024-05-01,oil-hinge,,\n");
    assertThat(read().problems())
        .filteredOn(problem -> problem.file().equals("boats/knot/log.csv"))
        .extracting(problem -> problem.line() + ": " + problem.wrong() + "; " + problem.right())
        .containsExactly(
            "2: is not counted while the page articles/procedures/oil-hinge.md cannot be read;"
                + " mend that page; this line is right as it is");
  }

  @Test
  void brokenLogLinesAreReportedAndTheRestIsRead() throws IOException {
    workspace.write(
        "boats/knot/log.csv",
        """
        date,work,engine-hours,note,hoists
        2024-04-20,launched,,,
        2024-05-01,mend,120,"With a comma, and ""quotes""\",3
        2024-02-30,mend,,no such day,
        2024-06-01,mned,,unknown work,
        2024-07-01,reading,110,backwards,
        2024-08-01,reading,many,no number,
        2024-09-01,mend
        """);
    Workspace after = read();
    assertThat(after.problems())
        .extracting(problem -> problem.line() + ": " + problem.wrong())
        .containsExactly(
            "4: \"2024-02-30\" is no date of the calendar",
            "5: \"mned\" is neither a procedure nor an event",
            "7: \"many\" is no count",
            "8: has 2 fields, not as many as the first line",
            "6: 110 on 2024-07-01 does not go with the readings before and after it, and is not"
                + " counted");
    assertThat(after.boat("knot").orElseThrow().log())
        .extracting(LogEntry::work)
        .containsExactly("launched", "mend", "reading");
    LogEntry mend = after.boat("knot").orElseThrow().log().get(1);
    assertThat(mend.note()).isEqualTo("With a comma, and \"quotes\"");
    assertThat(mend.uses()).isEqualTo(Map.of("hoists", 3));
  }

  @Test
  void aBrokenBoatFileHidesNoOtherBoat() throws IOException {
    workspace.write("boats/ruff/boat.yaml", "name: [Ruff\n");
    Files.write(
        Files.createDirectories(folder.resolve("boats/snipe")).resolve("boat.yaml"),
        new byte[] {0, 1, 2});
    Workspace after = read();
    assertThat(after.problems()).hasSize(2);
    assertThat(after.boats()).extracting(Boat::id).containsExactly("knot");
  }

  @Test
  void aCaseMustNameACauseOfItsSymptom() throws IOException {
    workspace.write(
        "articles/symptoms/wet.md",
        """
        ---
        title: Wet
        zones: [cabin]
        causes: [{id: seal, title: Seal, weight: 1, mend: mend}]
        checks:
          - {id: taste, ask: Salt, how: Taste., minutes: 1, answers: [yes, no], finds: {yes: {seal: often}}}
        ---
        """);
    String known = "symptom: wet\ndate: 2025-06-01\nmodel: plover-20\n";
    workspace.write("boats/cases/a.yaml", known + "cause: seal\nanswers: {taste: yes}\n");
    workspace.write("boats/cases/b.yaml", known + "cause: something-else\n");
    workspace.write("boats/cases/c.yaml", known + "cause: rain\nanswers: {taste: maybe}\n");
    Workspace after = read();
    assertThat(after.cases()).extracting(RecordedCase::id).containsExactly("a", "b");
    assertThat(after.problems())
        .extracting(problem -> problem.key() + " " + problem.wrong())
        .containsExactly(
            "answers.taste has no answer \"maybe\"", "cause the symptom has no cause \"rain\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "name: \"\" | 1: name: is empty",
        "launched: +999999999-01-01 | 5: launched: \"+999999999-01-01\" is out of range",
        "built: 2147483647 | 4: built: is 2147483647; write a whole number",
        "built: 1066 | 4: built: is 1066; write a whole number"
      })
  void whatNoBoatHasIsReportedOnItsLine(String line, String problem) throws IOException {
    String key = line.substring(0, line.indexOf(':') + 1);
    String boat = "name: Ruff\nmodel: plover-20\nhull: 18\nbuilt: 2014\n";
    workspace.write(
        "boats/ruff/boat.yaml",
        boat.contains(key)
            ? boat.replaceAll("(?m)^" + key + ".*$", java.util.regex.Matcher.quoteReplacement(line))
            : boat + line + "\n");
    assertThat(read().problems())
        .extracting(Problem::toString)
        .anyMatch(each -> each.startsWith("boats/ruff/boat.yaml:" + problem));
    assertThat(knot()).isNotNull();
  }

  @Test
  void twoBoatsOfOneHullNumberAreReported() throws IOException {
    workspace.write(
        "boats/ruff/boat.yaml", "name: Ruff\nmodel: plover-20\nhull: 17\nbuilt: 2014\n");
    assertThat(read().problems())
        .extracting(Problem::toString)
        .containsExactly(
            "boats/ruff/boat.yaml:3: hull: 17 is the hull number of knot too; correct the one that"
                + " is wrong; each boat of a model has its own");
  }

  @Test
  void filesThatAreNearlyNamedRightAreNotPassedOverInSilence() throws IOException {
    workspace.write("boats/ruff/Boat.yaml", "name: Ruff\n");
    workspace.write("boats/knot/Log.csv", "date,work,engine-hours,note\n");
    workspace.write("boats/snipe/log.csv", "date,work,engine-hours,note\n");
    workspace.write("boats/cases/a.yml", "symptom: wet\n");
    assertThat(read().problems())
        .extracting(Problem::toString)
        .containsExactlyInAnyOrder(
            "boats/knot/Log.csv: is not read under this name; name it log.csv",
            "boats/ruff/Boat.yaml: is not read under this name; name it boat.yaml",
            "boats/snipe/log.csv: belongs to no boat, because there is no boat.yaml beside it;"
                + " write one, or move the log to its boat",
            "boats/cases/a.yml: is not read under this name; let its name end in .yaml");
  }

  @Test
  void aLogThatIsALinkToNothingOrToItselfIsReported() throws IOException {
    Path log = folder.resolve("boats/knot/log.csv");
    Files.createSymbolicLink(log, folder.resolve("share/log.csv"));
    assertThat(read().problems())
        .extracting(Problem::toString)
        .containsExactly(
            "boats/knot/log.csv: is a link that leads to nothing; mend the link or take it away");
    Files.delete(log);
    Files.createSymbolicLink(log, log);
    assertThat(read().problems()).extracting(Problem::file).containsExactly("boats/knot/log.csv");
  }

  @Test
  void aByteOrderMarkIsNoPartOfLogOrStore() throws IOException {
    workspace.write(
        "boats/knot/log.csv", "\uFEFFdate,work,engine-hours,note\n2024-04-20,launched,,\n");
    workspace.write("boats/knot/stock.csv", "\uFEFFmaterial,left,opened,best-before,note\n");
    assertThat(read().problems()).isEmpty();
    assertThat(knot().log()).hasSize(1);
  }

  @Test
  void cellsLeftOutAtTheEndOfALineAreEmptyButTheFirstFourAreThere() throws IOException {
    workspace.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note,hoists\n2024-04-20,launched,,early\n2024-05-20,launched,\n");
    assertThat(knot().log()).extracting(LogEntry::note).containsExactly("early");
    assertThat(read().problems()).extracting(Problem::line).containsExactly(3);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{taste: }", "{taste: {a: b}}", "{taste: [a, b]}", "[a]", "{taste: []}", "no"})
  void aCaseWithAnAnswerThatIsNoneStopsNothing(String answers) throws IOException {
    workspace.write(
        "articles/symptoms/wet.md",
        """
        ---
        title: Wet
        zones: [cabin]
        causes: [{id: seal, title: Seal, weight: 1, mend: mend}]
        checks:
          - {id: taste, ask: Salt, how: Taste., minutes: 1, answers: [yes, no], finds: {yes: {seal: often}}}
        ---
        """);
    workspace.write(
        "boats/cases/a.yaml",
        "symptom: wet\ndate: 2025-06-01\nmodel: plover-20\ncause: seal\nanswers: "
            + answers
            + "\n");
    Workspace after = read();
    assertThat(after.boat("knot")).isPresent();
    assertThat(after.cases()).allSatisfy(each -> assertThat(each.answers()).isEmpty());
    assertThat(after.problems()).extracting(Problem::line).allMatch(line -> line == 5);
    assertThat(after.problems()).hasSizeLessThan(3);
  }
}
