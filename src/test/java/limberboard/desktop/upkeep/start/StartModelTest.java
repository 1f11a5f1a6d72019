package limberboard.desktop.upkeep.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.boat.HowKnown;
import limberboard.boat.LogWriter;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.desktop.upkeep.entry.LogModel;
import limberboard.desktop.upkeep.entry.LogStore;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.library.file.WorkspaceFolders;
import limberboard.upkeep.start.Start.Standing;
import limberboard.upkeep.start.StartQuestion;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartModelTest {
  private static final String HEAD = "date,work,engine-hours,note\n2026-05-01,launched,,\n";
  @TempDir Path folder;
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private WorkspaceFolders folders;
  private LogModel log;
  private StartModel model;

  @BeforeEach
  void open() throws IOException {
    folders = SmallWorkspace.copyTo(folder);
    Path file = folder.resolve("boats/knot/boat.yaml");
    Files.writeString(file, Files.readString(file) + "bought: 2026-03-01\n");
    Files.writeString(folder.resolve("boats/knot/log.csv"), HEAD);
    Files.writeString(
        folder.resolve("articles/procedures/look-at-vent.md"),
        "---\n"
            + "title: Look at the vent\n"
            + "system: deck\n"
            + "work: inspect\n"
            + "skill: owner\n"
            + "minutes: 10\n"
            + "fits: {not-fitted: vent-fitted}\n"
            + "look-for: {good: Firm., bad: Loose.}\n"
            + "interval: {every: P1Y, surveyed: true, left-undone: sinks, need: must}\n"
            + "---\n"
            + "1. Look.\n");
    UpkeepModel upkeep = new UpkeepModel(session, Steps.atOnce(), folders);
    log = new LogModel(session, LogStore.of(new LogWriter(folders)), Steps.atOnce());
    log.afterWriting(this::read);
    model = new StartModel(upkeep, log);
    read();
  }

  private void read() {
    session.replace(SmallWorkspace.read(folders));
  }

  private StartQuestion question(String id) {
    return model.questions().stream().filter(each -> each.id().equals(id)).findFirst().get();
  }

  private String text() throws IOException {
    return Files.readString(folder.resolve("boats/knot/log.csv"));
  }

  @Test
  void allIsWrittenInOneStepAndTakenBackInOne() throws IOException {
    AtomicInteger written = new AtomicInteger();
    model.afterWriting(written::incrementAndGet);
    assertThat(model.standing()).isEqualTo(Standing.NOT_BEGUN);
    assertThat(model.questions()).extracting(StartQuestion::id).startsWith("deck-care");
    assertThat(model.canWrite()).isFalse();
    model.tell("deck-care", Told.SURVEY);
    model.when("deck-care", "12 Sep 2025");
    model.tell("deck-renewals", Told.SAID);
    model.when("deck-renewals", "2024");
    assertThat(model.canWrite()).isTrue();
    model.write();
    assertThat(text())
        .contains("2025-09-12,look-at-vent,,,survey", "2024-01-01,replace-gasket,,,said year");
    assertThat(written).hasValue(1);
    assertThat(model.isTouched()).isFalse();
    assertThat(model.standing()).isEqualTo(Standing.NOTHING);
    assertThat(log.toUndo()).contains("writing 2 lines");
    log.undo();
    assertThat(text()).isEqualTo(HEAD);
    assertThat(model.standing()).isEqualTo(Standing.NOT_BEGUN);
  }

  @Test
  void whatIsNotWrittenYetIsKeptForEachBoatAndNamedBeforeItIsLost() throws IOException {
    assertThat(model.halfTyped()).isEmpty();
    model.tell("deck-care", Told.BILL);
    assertThat(model.halfTyped()).containsExactly("knot");
    assertThat(model.wrong()).isEqualTo(1);
    assertThat(model.canWrite()).isFalse();
    session.choose(Optional.of("stint"));
    assertThat(model.halfTyped()).containsExactly("knot");
    session.choose(Optional.of("knot"));
    assertThat(model.told(question("deck-care"))).isEqualTo(Told.BILL);
    model.clear();
    assertThat(model.halfTyped()).isEmpty();
    assertThat(model.told(question("deck-care"))).isEqualTo(Told.NOT_KNOWN);
    assertThat(text()).isEqualTo(HEAD);
  }

  @Test
  void aSurveyAnswersWhatItCanHaveLookedAtAndAWrongDayIsSaid() {
    model.survey("30 Feb 2026");
    assertThat(model.surveyWrong()).contains("is no day");
    assertThat(model.lines()).isEmpty();
    model.survey("2025-09-12");
    assertThat(model.surveyWrong()).isEmpty();
    assertThat(model.facts(question("deck-care"))).endsWith("1 of 1 answered");
    assertThat(model.lines()).extracting(line -> line.work()).containsExactly("look-at-vent");
  }

  @Test
  void whatAnswersAQuestionAsAWholeCountsForEachOfIts() throws IOException {
    Path other = folder.resolve("articles/procedures/look-at-lid.md");
    Files.writeString(
        other,
        Files.readString(folder.resolve("articles/procedures/look-at-vent.md"))
            .replace("Look at the vent", "Look at the lid"));
    read();
    StartQuestion deck = question("deck-care");
    assertThat(model.facts(deck)).endsWith("2 pieces of work");
    model.tell("deck-care", Told.SAID);
    model.when("deck-care", "2024");
    assertThat(model.facts(deck)).endsWith("2 of 2 answered");
    model.tell("look-at-lid", Told.NOT_KNOWN);
    assertThat(model.facts(deck)).endsWith("1 of 2 answered");
    model.survey("2025-09-12");
    assertThat(model.lines())
        .extracting(line -> line.known().orElseThrow().from())
        .containsExactly(HowKnown.From.SAID);
  }

  @Test
  void aSurveyShowsBesideTheQuestionThatItAnswers() throws IOException {
    model.survey("2025-09-12");
    assertThat(model.told(question("deck-care"))).isEqualTo(Told.SURVEY);
    assertThat(model.when(model.key(question("deck-care")))).isEqualTo("2025-09-12");
    model.clear();
    Path other = folder.resolve("articles/procedures/look-at-lid.md");
    Files.writeString(
        other,
        Files.readString(folder.resolve("articles/procedures/look-at-vent.md"))
            .replace("Look at the vent", "Look at the lid"));
    read();
    assertThat(model.told(question("deck-care"))).isEqualTo(Told.NOT_KNOWN);
    model.survey("2025-09-12");
    assertThat(model.told(question("deck-care"))).isEqualTo(Told.EACH);
    assertThat(model.facts(question("deck-care"))).endsWith("2 of 2 answered");
    model.tell("deck-care", Told.EACH);
    assertThat(model.isUnfolded(question("deck-care"))).isTrue();
    assertThat(model.lines()).hasSize(2);
  }

  @Test
  void whatIsNotAboardNamesTheEquipmentThatDecides() {
    assertThat(model.notAboard(question("deck-care"))).contains("Locker vent");
    assertThat(model.notAboard(question("deck-renewals"))).contains("every boat of her kind");
  }

  @Test
  void aDayThatCannotBeIsSaidBesideItsAnswer() {
    model.tell("deck-care", Told.DATE_SEEN);
    model.when("deck-care", "2031");
    assertThat(model.problem("deck-care")).contains("lies in the future");
    model.when("deck-care", "2010");
    assertThat(model.problem("deck-care")).contains("before she was new");
    model.when("deck-care", "4/2026");
    assertThat(model.problem("deck-care")).isEmpty();
  }
}
