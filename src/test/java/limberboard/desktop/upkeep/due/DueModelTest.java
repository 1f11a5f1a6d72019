package limberboard.desktop.upkeep.due;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import limberboard.boat.LogWriter;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.FullDisk;
import limberboard.desktop.upkeep.entry.EntryForm;
import limberboard.desktop.upkeep.entry.EntryForm.Field;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Need;
import limberboard.library.value.Phase;
import limberboard.library.value.Skill;
import limberboard.upkeep.Due;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DueModelTest {
  private static final LocalDate LATER = LocalDate.of(2029, 6, 1);
  @TempDir Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private WorkspaceFolders folders;
  private UpkeepModel upkeep;
  private LogModel log;
  private DueModel model;

  @BeforeEach
  void open() {
    folders = SmallWorkspace.copyTo(folder);
    upkeep = new UpkeepModel(session, Steps.atOnce(), folders);
    log = new LogModel(session, LogStore.of(new LogWriter(folders)), Steps.atOnce());
    log.afterWriting(this::read);
    model = new DueModel(upkeep, log);
    read();
    upkeep.day(Optional.of(LATER));
  }

  private void read() {
    session.replace(SmallWorkspace.read(folders));
  }

  private String text() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  @Test
  void markingDoneChangesTheListAndTheFileAndUndoRestoresBoth() throws IOException {
    String before = text();
    assertThat(model.rows()).extracting(Due::id).containsExactly("replace-gasket");
    model.mark();
    EntryForm form = model.form().orElseThrow();
    form.set(Field.NOTE, "in two pieces");
    model.write();
    assertThat(text())
        .isEqualTo(before + "2026-05-20,replace-gasket,,in two pieces" + lineEnd(before));
    assertThat(model.rows()).isEmpty();
    assertThat(model.form()).isEmpty();
    assertThat(log.remark().orElseThrow().text())
        .isEqualTo("Written into Knot’s log: 20 May 2026, Replace the locker gasket.");
    assertThat(log.toUndo()).contains("writing “Replace the locker gasket”, 20 May 2026");
    log.undo();
    assertThat(text()).isEqualTo(before);
    assertThat(model.rows()).extracting(Due::id).containsExactly("replace-gasket");
    assertThat(log.toUndo()).isEmpty();
  }

  private static String lineEnd(String text) {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  @Test
  void aBrokenLogKeepsTheFormAndSaysWhy() throws IOException {
    String broken = text() + "2025-05-01,launched,,\"never closed\n";
    model.mark();
    model.form().orElseThrow().set(Field.NOTE, "typed");
    Files.writeString(folder.resolve("boats/knot/log.csv"), broken);
    model.write();
    assertThat(log.remark().orElseThrow().failed()).isTrue();
    assertThat(log.remark().orElseThrow().text())
        .startsWith("Nothing was written into Knot’s log: boats/knot/log.csv")
        .contains("cannot be read to its end");
    assertThat(text()).isEqualTo(broken);
    assertThat(model.form().orElseThrow().text(Field.NOTE)).isEqualTo("typed");
  }

  @Test
  void aFormWithSomethingWrongInItWritesNothing() throws IOException {
    String before = text();
    model.mark();
    model.form().orElseThrow().set(Field.DAY, "tomorrow");
    model.write();
    assertThat(text()).isEqualTo(before);
    assertThat(model.form()).isPresent();
    assertThat(log.remark()).isEmpty();
  }

  @Test
  void theHalfTypedFormOfABoatIsKeptWhileAnotherIsLookedAt() {
    model.mark();
    model.form().orElseThrow().set(Field.NOTE, "half");
    session.choose(Optional.of("stint"));
    assertThat(model.form()).isEmpty();
    session.choose(Optional.of("knot"));
    assertThat(model.form().orElseThrow().text(Field.NOTE)).isEqualTo("half");
    model.leave();
    assertThat(model.form()).isEmpty();
  }

  @Test
  void theFilterKeepsOtherPeoplesAndOtherTimesWorkBack() {
    model.filter(Filter.ALL.by(Optional.of(Skill.YARD)));
    assertThat(model.rows()).isEmpty();
    assertThat(model.keptBack()).isEqualTo(1);
    assertThat(new DueSummary(model).nothing()).contains("For anybody");
    model.filter(Filter.ALL.in(Optional.of(Phase.AFLOAT)));
    assertThat(model.rows()).isEmpty();
    model.filter(Filter.ALL.by(Optional.of(Skill.OWNER)).in(Optional.of(Phase.ASHORE_MAST_DOWN)));
    assertThat(model.rows()).hasSize(1);
  }

  @Test
  void theFilterKeepsWhatIsNeededOtherwiseBack() {
    Need need = model.rows().get(0).need();
    for (Need each : Need.values()) {
      model.filter(Filter.ALL.needed(Optional.of(each)));
      assertThat(model.rows())
          .extracting(Due::need)
          .isEqualTo(each == need ? List.of(need) : List.of());
    }
    model.filter(Filter.ALL);
    assertThat(model.keptBack()).isZero();
  }

  @Test
  void whatComesLaterIsFoldedUntilAskedFor() {
    upkeep.day(Optional.empty());
    assertThat(model.rows()).isEmpty();
    assertThat(new DueSummary(model).nothing()).startsWith("Nothing is due this season");
    model.showComing(true);
    assertThat(model.rows()).extracting(Due::id).containsExactly("replace-gasket");
  }

  @Test
  void aLogThatCannotBeWrittenIsSaidAndNothingIsLost() {
    LogStore full = new FullDisk();
    LogModel failing = new LogModel(session, full, Steps.atOnce());
    DueModel due = new DueModel(upkeep, failing);
    due.mark();
    due.form().orElseThrow().set(Field.NOTE, "typed");
    due.write();
    assertThat(failing.remark().orElseThrow().text())
        .isEqualTo("Nothing was written into Knot’s log: the log: there is no space left");
    assertThat(failing.toUndo()).isEmpty();
    assertThat(due.form().orElseThrow().text(Field.NOTE)).isEqualTo("typed");
  }

  @Test
  void severalUndosAndRedosGoStepByStepAndANewChangeEndsRedoing() throws IOException {
    String before = text();
    model.mark();
    model.write();
    String first = text();
    log.remove(session.boat().orElseThrow().log().get(0));
    String second = text();
    assertThat(log.toUndo()).contains("deleting “Replace the locker gasket”, 10 April 2024");
    log.undo();
    assertThat(text()).isEqualTo(first);
    log.undo();
    assertThat(text()).isEqualTo(before);
    assertThat(log.toUndo()).isEmpty();
    log.redo();
    log.redo();
    assertThat(text()).isEqualTo(second);
    assertThat(log.toRedo()).isEmpty();
    log.undo();
    log.remove(session.boat().orElseThrow().log().get(1));
    assertThat(log.toRedo()).isEmpty();
  }

  @Test
  void aChangeWhoseLineSomebodyElseTookOutIsGivenUpWithTheReason() throws IOException {
    String before = text();
    model.mark();
    model.write();
    Files.writeString(folder.resolve("boats/knot/log.csv"), before);
    read();
    log.undo();
    assertThat(log.remark().orElseThrow().failed()).isTrue();
    assertThat(log.remark().orElseThrow().text())
        .startsWith("Not undone: writing “Replace the locker gasket”, 20 May 2026 in Knot’s log: ");
    assertThat(text()).isEqualTo(before);
    assertThat(log.toUndo()).isEmpty();
  }

  @Test
  void severalPiecesOfWorkShareADayAndEachHasItsNote() {
    EntryForm form =
        new EntryForm(
            java.util.List.of(
                new EntryForm.Doing("replace-gasket", Optional.empty(), "Replace the gasket"),
                new EntryForm.Doing("seal-vent", Optional.empty(), "Seal the vent")),
            SmallWorkspace.TODAY,
            java.util.List.of("hoists"));
    form.set(Field.HOURS, "12,5");
    form.set(Field.count("hoists"), "4");
    form.set(new Field(EntryForm.Kind.NOTE, "seal-vent"), "both ends");
    assertThat(form.fields())
        .extracting(form::label)
        .endsWith("Replace the gasket", "Seal the vent");
    assertThat(form.entries())
        .extracting(limberboard.boat.LogEntry::note)
        .containsExactly("", "both ends");
    assertThat(form.entries()).allMatch(entry -> entry.engineHours().orElse(0) == 12.5);
    assertThat(form.entries().get(0).uses()).containsEntry("hoists", 4);
    assertThat(form.entries().get(1).uses()).isEmpty();
    form.set(Field.count("hoists"), "123456789");
    assertThat(form.problem(Field.count("hoists"))).contains("too many digits");
    assertThat(form.entries()).isEmpty();
  }

  @Test
  void tickedWorkIsWrittenTogetherInOneStep() throws IOException {
    String before = text();
    model.tick("replace-gasket");
    assertThat(model.tickedMinutes()).isPositive();
    model.markTicked();
    model.write();
    assertThat(text()).isEqualTo(before + "2026-05-20,replace-gasket,,\n");
    assertThat(model.ticked()).isEmpty();
  }

  @Test
  void aBoatThatNobodyEnteredHasNoLogAndIsToldSo() {
    session.choose(Optional.of("a dinghy of 2018"));
    log.add(
        java.util.List.of(
            new limberboard.boat.LogEntry(
                SmallWorkspace.TODAY,
                "seal-vent",
                java.util.OptionalDouble.empty(),
                java.util.Map.of(),
                "",
                Optional.empty(),
                0)),
        () -> {});
    assertThat(log.remark().orElseThrow().text()).contains("not entered").contains("under Boats");
  }
}
