package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.Alternative;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TraceModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final TraceModel model = new TraceModel(session, Steps.atOnce());

  private void read() {
    session.replace(SmallWorkspace.read());
  }

  private void trace() {
    read();
    model.start("wet-locker");
    model.cautionsRead();
  }

  private double chance(String cause) {
    return model.trace().orElseThrow().ranking().stream()
        .filter(ranked -> ranked.cause().id().equals(cause))
        .mapToDouble(RankedCause::chance)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void saysThatTheLibraryIsBeingReadAndThenAsksWhichBoat() {
    assertThat(model.stage()).isEqualTo(Stage.READING);
    session.choose(Optional.empty());
    read();
    assertThat(model.stage()).isEqualTo(Stage.NO_BOAT);
    session.choose(Optional.of("knot"));
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
  }

  @Test
  void offersTheSymptomsOfTheChosenZoneThatFitTheBoat() {
    read();
    assertThat(titles()).containsExactly("A smell of gas", "Water in the locker");
    model.where().choose(Optional.of("locker"));
    assertThat(titles()).containsExactly("Water in the locker");
    assertThat(model.where().count("locker")).isEqualTo(1);
    assertThat(model.where().count("mast")).isZero();
    assertThat(model.where().allSymptoms()).isEqualTo(2);
  }

  private List<String> titles() {
    return model.where().symptoms().stream().map(noticed -> noticed.page().title()).toList();
  }

  @Test
  void everythingIncludesOtherPlacesAndOtherBoatsWithTheReason() {
    read();
    session.choose(Optional.of("stint"));
    assertThat(titles()).containsExactly("Water in the locker");
    model.where().everything(true);
    assertThat(titles()).containsExactly("Water in the locker", "A smell of gas");
    OfferedSymptom last = model.where().symptoms().get(1);
    assertThat(last.fit().fits()).isFalse();
    assertThat(last.fit().reason()).contains("gas");
    assertThat(model.start("gas-smell")).isFalse();
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
  }

  @Test
  void cautionsComeBeforeAnyQuestion() {
    read();
    assertThat(model.start("wet-locker")).isTrue();
    assertThat(model.stage()).isEqualTo(Stage.CAUTIONS);
    assertThat(model.cautions()).extracting(WorkCaution::id).containsExactly("flooding");
    model.cautionsRead();
    assertThat(model.stage()).isEqualTo(Stage.CHECK);
    assertThat(model.cautions()).isNotEmpty();
  }

  @Test
  void answersCanBeChangedAndTakenBackAndChancesFollow() {
    trace();
    double before = chance("hose");
    model.answer("when", "after-washing");
    double after = chance("hose");
    assertThat(after).isGreaterThan(before);
    model.answer("when", "after-rain");
    assertThat(chance("hose")).isLessThan(before);
    model.answer("when", "after-washing");
    assertThat(chance("hose")).isEqualTo(after);
    model.takeBack("when");
    assertThat(chance("hose")).isEqualTo(before);
    assertThat(model.trace().orElseThrow().trail()).isEmpty();
  }

  @Test
  void notBeingAbleToTellChangesNoChance() {
    trace();
    double before = chance("hose");
    model.cantTell("when");
    assertThat(chance("hose")).isEqualTo(before);
    assertThat(model.trace().orElseThrow().trail()).hasSize(1);
    assertThat(model.step().orElseThrow().id()).isNotEqualTo("when");
  }

  @Test
  void leadsToTheMendAndOnWhenItDidNotHelp() {
    trace();
    model.answer("when", "after-washing");
    model.answer("clip", "turns");
    assertThat(model.stage()).isEqualTo(Stage.MEND);
    assertThat(model.step().orElseThrow().id()).isEqualTo("tighten-hose");
    double before = chance("hose");
    model.didNotHelp("hose");
    assertThat(chance("hose")).isLessThan(before);
    model.takeBackMend("hose");
    assertThat(model.stage()).isEqualTo(Stage.MEND);
    model.itIsMended(model.trace().map(found -> found.ranking().get(0).cause()));
    assertThat(model.stage()).isEqualTo(Stage.MENDED);
    assertThat(model.mended().orElseThrow().title()).isEqualTo("The drain hose weeps");
    model.notMendedAfterAll();
    assertThat(model.stage()).isEqualTo(Stage.MEND);
    model.finish();
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
    assertThat(model.answersGiven("wet-locker")).isZero();
  }

  @Test
  void aTraceThatIsLeftForAnotherSymptomGoesOnWhereItWas() {
    trace();
    model.answer("when", "after-rain");
    Stage before = model.stage();
    model.leave();
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
    assertThat(model.answersGiven("wet-locker")).isEqualTo(1);
    model.start("gas-smell");
    assertThat(model.stage()).isEqualTo(Stage.CAUTIONS);
    model.start("wet-locker");
    assertThat(model.trace().orElseThrow().answers()).containsEntry("when", "after-rain");
    assertThat(model.stage()).isEqualTo(before);
  }

  @Test
  void startingAgainTakesAllAnswersBack() {
    trace();
    model.answer("when", "after-rain");
    model.startAgain();
    assertThat(model.trace().orElseThrow().trail()).isEmpty();
    assertThat(model.stage()).isEqualTo(Stage.CHECK);
  }

  @Test
  void whatOnlySomebodyLicensedMayDoIsHandedOver() {
    read();
    model.start("gas-smell");
    model.cautionsRead();
    model.cantTell("bottle");
    assertThat(model.stage()).isEqualTo(Stage.YARD);
    String report = new YardReport(model.trace().orElseThrow()).text();
    assertThat(report)
        .contains("A smell of gas", "Knot, Dinghy 18, hull 7, built 2016", "Is the bottle shut?")
        .contains("The gas line leaks");
  }

  @Test
  void anotherStepThanTheOneAdvisedCanBeTaken() {
    trace();
    String advised = model.step().orElseThrow().id();
    model.trace().orElseThrow().alternatives().stream()
        .map(Alternative::step)
        .filter(step -> step.kind().equals("check") && !step.id().equals(advised))
        .findFirst()
        .ifPresent(model::pick);
    assertThat(model.step().orElseThrow().id()).isNotEqualTo(advised);
    String picked = model.step().orElseThrow().id();
    model.cantTell(picked);
    assertThat(model.trace().orElseThrow().trail().get(0).step().id()).isEqualTo(picked);
    assertThat(model.step().orElseThrow().id()).isEqualTo(advised);
  }

  @Test
  void eachBoatKeepsItsOwnTrace() {
    trace();
    model.answer("when", "after-rain");
    session.choose(Optional.of("stint"));
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
    session.choose(Optional.of("knot"));
    assertThat(model.trace().orElseThrow().answers()).containsEntry("when", "after-rain");
  }

  @Test
  void readingTheLibraryAgainKeepsTheAnswersThatAreStillPossible(@TempDir Path folder)
      throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    model.start("wet-locker");
    model.cautionsRead();
    model.answer("when", "after-rain");
    model.answer("strip", "slips");
    Path page = folders.articles().resolve("symptoms/wet-locker.md");
    Files.writeString(
        page,
        Files.readString(page)
            .replace("title: The gasket no longer seals", "title: The gasket is flat")
            .replace("answers: [holds, slips]", "answers: [holds, comes-out]")
            .replace("slips:", "comes-out:"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(model.trace().orElseThrow().answers()).containsOnlyKeys("when");
    assertThat(model.trace().orElseThrow().ranking())
        .anySatisfy(r -> assertThat(r.cause().title()).isEqualTo("The gasket is flat"));
    assertThat(model.stage()).isNotEqualTo(Stage.CAUTIONS);
  }

  @Test
  void aSymptomThatIsTakenOutOfTheLibraryEndsItsTrace(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    model.start("wet-locker");
    Files.delete(folders.articles().resolve("symptoms/wet-locker.md"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
  }

  @Test
  void weighingRunsInTheBackgroundAndTheNewestAnswerCounts() {
    Steps steps = new Steps();
    TraceModel slow = new TraceModel(session, steps.background());
    read();
    slow.start("wet-locker");
    assertThat(slow.isWorking()).isTrue();
    assertThat(slow.stage()).isEqualTo(Stage.CHOOSING);
    steps.all();
    slow.cautionsRead();
    slow.answer("when", "after-rain");
    assertThat(slow.isWorking()).isTrue();
    assertThat(slow.trace().orElseThrow().answers()).isEmpty();
    slow.answer("when", "always");
    slow.answer("clip", "firm");
    steps.all();
    assertThat(slow.isWorking()).isFalse();
    assertThat(slow.trace().orElseThrow().answers())
        .containsEntry("when", "always")
        .containsEntry("clip", "firm");
  }

  @Test
  void saysWhatKeepsItFromComingBack() {
    read();
    Prevention prevention = new Prevention(session.library(), session.fitting().orElseThrow());
    assertThat(prevention.of("replace-gasket"))
        .singleElement()
        .asString()
        .startsWith("Replace the locker gasket. How often: ")
        .contains("4 years");
    assertThat(prevention.of("tighten-hose"))
        .as("the page with an interval that points to it")
        .singleElement()
        .asString()
        .startsWith("Replace the locker gasket.");
    assertThat(prevention.of("nowhere")).isEmpty();
  }

  private List<String> planned(Runnable doing) {
    List<String> works = new ArrayList<>();
    guarded = works::add;
    doing.run();
    guarded = work -> {};
    return works;
  }

  @Test
  void readingTheLibraryAgainPlansNothingAnewWhenTheNumbersAreTheSame(@TempDir Path folder)
      throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    TraceModel watched = guardedModel();
    watched.start("wet-locker");
    watched.cautionsRead();
    watched.answer("when", "after-rain");
    Trace before = watched.trace().orElseThrow();
    Path log = folders.boats().resolve("knot/log.csv");
    Files.writeString(log, Files.readString(log) + "2026-05-19,event,,,,,washed down\n");
    assertThat(planned(() -> session.replace(SmallWorkspace.read(folders))))
        .doesNotContain("planning a step");
    assertThat(watched.trace().orElseThrow()).as("a log does not count").isSameAs(before);
    Path page = folders.articles().resolve("symptoms/wet-locker.md");
    Files.writeString(
        page, Files.readString(page).replace("title: Water in the locker", "title: A wet locker"));
    assertThat(planned(() -> session.replace(SmallWorkspace.read(folders))))
        .contains("weighing a boat's causes")
        .doesNotContain("planning a step");
    assertThat(watched.trace().orElseThrow().fault().page().title()).isEqualTo("A wet locker");
    Files.writeString(page, Files.readString(page).replace("weight: 6", "weight: 1"));
    assertThat(planned(() -> session.replace(SmallWorkspace.read(folders))))
        .as("other numbers need another plan")
        .contains("planning a step");
  }

  private limberboard.desktop.base.Guard guarded = work -> {};

  private TraceModel guardedModel() {
    return new TraceModel(
        session,
        Steps.atOnce(),
        new KeptTraces(TraceStore.NONE, Steps.atOnce(), notices),
        notices,
        work -> guarded.begins(work));
  }

  private final Notices notices = new Notices();

  @Test
  void answersThatFitNoLongerAreSaidToBeLeftOut(@TempDir Path folder) throws IOException {
    WorkspaceFolders folders = SmallWorkspace.copyTo(folder);
    session.replace(SmallWorkspace.read(folders));
    TraceModel watched = guardedModel();
    watched.start("wet-locker");
    watched.cautionsRead();
    watched.answer("strip", "slips");
    Path page = folders.articles().resolve("symptoms/wet-locker.md");
    Files.writeString(
        page,
        Files.readString(page)
            .replace("answers: [holds, slips]", "answers: [holds, comes-out]")
            .replace("slips:", "comes-out:"));
    session.replace(SmallWorkspace.read(folders));
    assertThat(watched.trace().orElseThrow().trail()).isEmpty();
    assertThat(notices.current().orElseThrow().text()).contains("1 of your answers fits no check");
  }

  @Test
  void anAnswerBeingWeighedOnOneBoatIsKeptWhenATraceStartsOnAnother() {
    Steps steps = new Steps();
    TraceModel slow = new TraceModel(session, steps.background());
    read();
    slow.start("wet-locker");
    steps.all();
    slow.cautionsRead();
    slow.answer("when", "after-rain");
    session.choose(Optional.of("stint"));
    slow.start("wet-locker");
    assertThat(slow.isWorking()).isTrue();
    steps.all();
    assertThat(slow.trace().orElseThrow().answers()).isEmpty();
    session.choose(Optional.of("knot"));
    steps.all();
    assertThat(slow.trace().orElseThrow().answers()).containsEntry("when", "after-rain");
  }

  @Test
  void leavingWhileAnAnswerIsWeighedDoesNotLoseIt() {
    Steps steps = new Steps();
    TraceModel slow = new TraceModel(session, steps.background());
    read();
    slow.start("wet-locker");
    steps.all();
    slow.cautionsRead();
    slow.answer("when", "after-rain");
    slow.leave();
    steps.all();
    assertThat(slow.stage()).isEqualTo(Stage.CHOOSING);
    assertThat(slow.answersGiven("wet-locker")).isEqualTo(1);
  }

  @Test
  void startingAgainCanBeUndoneAndDoneAgain() {
    trace();
    assertThat(model.undoes()).isEmpty();
    model.answer("when", "after-rain");
    model.answer("strip", "slips");
    model.startAgain();
    assertThat(model.trace().orElseThrow().trail()).isEmpty();
    assertThat(model.undoes()).contains("starting again");
    model.undo();
    assertThat(model.trace().orElseThrow().answers())
        .containsEntry("when", "after-rain")
        .containsEntry("strip", "slips");
    assertThat(model.redoes()).contains("starting again");
    model.redo();
    assertThat(model.trace().orElseThrow().trail()).isEmpty();
    model.undo();
    model.undo();
    assertThat(model.trace().orElseThrow().answers()).containsOnlyKeys("when");
    model.answer("when", "always");
    assertThat(model.redoes()).as("something else has been done since").isEmpty();
    model.undo();
    assertThat(model.trace().orElseThrow().answers()).containsEntry("when", "after-rain");
    model.undo();
    model.undo();
    assertThat(model.trace().orElseThrow().trail()).isEmpty();
    assertThat(model.undoes()).isEmpty();
  }

  @Test
  void undoingWhileAnAnswerIsWeighedTakesThatAnswerBack() {
    Steps steps = new Steps();
    TraceModel slow = new TraceModel(session, steps.background());
    read();
    slow.start("wet-locker");
    steps.all();
    slow.cautionsRead();
    slow.answer("when", "after-rain");
    steps.all();
    slow.answer("strip", "slips");
    slow.undo();
    steps.all();
    assertThat(slow.trace().orElseThrow().answers()).containsOnlyKeys("when");
    assertThat(slow.isWorking()).isFalse();
  }
}
