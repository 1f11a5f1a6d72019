package limberboard.desktop.boats;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.boat.Boat;
import limberboard.boat.BoatWriter;
import limberboard.boat.Season;
import limberboard.desktop.base.Activity;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.boats.UnsavedQuestion.Answer;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.Library;
import limberboard.library.page.Model.Choice;
import limberboard.library.problem.Problem;
import limberboard.library.value.Use;
import limberboard.library.value.Water;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BoatFormModelTest {
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final List<Boat> written = new ArrayList<>();
  private final Notices notices = new Notices();
  private final BoatFormModel model =
      new BoatFormModel(session, this::save, Steps.atOnce(notices), notices);
  private Answer answer = Answer.STAY;
  private int asked;

  private BoatWriter.Outcome save(Library library, Optional<Boat> base, Boat boat) {
    written.add(boat);
    return new BoatWriter.Saved(boat);
  }

  @BeforeEach
  void read() {
    session.replace(SmallWorkspace.read());
    model.askUnsaved(
        () -> {
          asked++;
          return answer;
        });
  }

  @Test
  void theChosenBoatIsInTheForm() {
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Knot");
    assertThat(model.form().draft().text(Field.LAUNCHED)).isEqualTo("20 May 2016");
    assertThat(model.form().draft().text(Field.SEASON_FROM)).isEqualTo("15 April");
    assertThat(model.form().isChanged()).isFalse();
    assertThat(model.form().problems()).isEmpty();
  }

  @Test
  void theFormFollowsTheBoatThatIsChosenForTheWindow() {
    session.choose(Optional.of("stint"));
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Stint");
  }

  @Test
  void unsavedChangesStayWhenAnotherBoatIsChosenForTheWindow() {
    model.form().set(Field.NAME, "Red Knot");
    session.choose(Optional.of("stint"));
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Red Knot");
    assertThat(model.form().original().orElseThrow().id()).isEqualTo("knot");
  }

  @Test
  void whatCameAfterSheWasBuiltCanBeChosenAsFittedLater() {
    assertThat(choices("stove")).containsExactly("stove-none", "stove-gas");
    assertThat(later("stove")).isEmpty();
    model.form().set(Field.BUILT, "2011");
    assertThat(choices("stove")).containsExactly("stove-none", "stove-gas");
    assertThat(later("stove")).containsExactly("stove-gas");
    assertThat(later("vent")).containsExactly("vent-fitted");
    model.form().fit("stove", "stove-gas");
    model.form().set(Field.LAUNCHED, "");
    model.save();
    assertThat(written.get(0).equipment()).containsEntry("stove", "stove-gas");
    assertThat(model.form().draft().equipment()).containsEntry("stove", "stove-gas");
  }

  @Test
  void aYearThatIsHalfTypedChangesNoEquipment() {
    model.form().fit("vent", "vent-fitted");
    model.form().set(Field.BUILT, "201");
    model.form().set(Field.BUILT, "2014");
    assertThat(model.form().draft().equipment()).containsEntry("vent", "vent-fitted");
  }

  private List<String> later(String equipment) {
    return model.form().equipment().stream()
        .filter(one -> one.id().equals(equipment))
        .flatMap(one -> one.choices().stream().filter(choice -> model.form().isLater(one, choice)))
        .map(Choice::id)
        .toList();
  }

  private List<String> choices(String equipment) {
    return model.form().equipment().stream()
        .filter(one -> one.id().equals(equipment))
        .flatMap(one -> one.choices().stream())
        .map(Choice::id)
        .toList();
  }

  @Test
  void equipmentThatCouldNotBeHadBecomesWhatTheYardFitted() {
    model.form().fit("vent", "vent-fitted");
    assertThat(model.form().draft().equipment()).containsEntry("vent", "vent-fitted");
    model.form().set(Field.BUILT, "2011");
    assertThat(model.form().draft().equipment()).containsEntry("vent", "vent-none");
    assertThat(model.form().draft().equipment()).containsEntry("stove", "stove-none");
  }

  @Test
  void whatAnotherModelHadIsNotTakenForFittedOnANewBoat() {
    model.newBoat();
    model.form().set(Field.MODEL, "barge");
    model.form().set(Field.MODEL, "dinghy");
    assertThat(model.form().draft().equipment()).isEmpty();
    model.form().set(Field.BUILT, "201");
    assertThat(model.form().draft().equipment()).isEmpty();
    model.form().set(Field.BUILT, "2014");
    assertThat(model.form().draft().equipment())
        .containsEntry("vent", "vent-none")
        .containsEntry("stove", "stove-gas");
  }

  @Test
  void theDayOnWhichSheWasBoughtIsChecked() {
    model.form().set(Field.BOUGHT, "last autumn");
    assertThat(model.form().problems().get(Field.BOUGHT)).startsWith("Write the day as");
    model.form().set(Field.BOUGHT, "2025");
    assertThat(model.form().problems().get(Field.BOUGHT))
        .isEqualTo(
            "A day is needed here. Where you know no more than this, write its first day, 1 January"
                + " 2025.");
    model.form().set(Field.BOUGHT, "Oct 2025");
    assertThat(model.form().problems().get(Field.BOUGHT)).endsWith("first day, 1 October 2025.");
    model.form().set(Field.BOUGHT, "10/2025");
    assertThat(model.form().problems().get(Field.BOUGHT)).endsWith("first day, 1 October 2025.");
    model.form().set(Field.BOUGHT, "2025-10");
    assertThat(model.form().problems().get(Field.BOUGHT)).endsWith("first day, 1 October 2025.");
    model.form().set(Field.BOUGHT, "1 Jan 2030");
    assertThat(model.form().problems().get(Field.BOUGHT)).contains("in the future");
    model.form().set(Field.BOUGHT, "1 Jan 2010");
    assertThat(model.form().problems().get(Field.BOUGHT)).contains("was not sold on before");
    model.form().set(Field.BOUGHT, "3 Apr 2025");
    assertThat(model.form().problems()).doesNotContainKey(Field.BOUGHT);
    assertThat(model.form().isToBegin()).isFalse();
    assertThat(model.save()).isTrue();
    assertThat(model.form().original().orElseThrow().bought()).contains(LocalDate.of(2025, 4, 3));
    assertThat(model.form().isToBegin()).isTrue();
  }

  @Test
  void anotherModelBringsItsOwnEquipment() {
    model.form().set(Field.MODEL, "barge");
    assertThat(model.form().draft().equipment())
        .containsOnlyKeys("helm")
        .containsEntry("helm", "wheel");
  }

  @Test
  void whatIsWrongStandsBesideItsField() {
    model.form().set(Field.NAME, "  ");
    model.form().set(Field.HULL, "100");
    model.form().set(Field.BUILT, "2021");
    model.form().set(Field.LAUNCHED, "31 February 2016");
    model.form().set(Field.SEASON_TO, "");
    assertThat(model.form().problems())
        .containsEntry(Field.NAME, "Write what the boat is called.")
        .containsEntry(Field.HULL, "Hull numbers of this model are 1 to 99.")
        .containsEntry(Field.BUILT, "This model was built 2010 to 2020.")
        .containsKeys(Field.LAUNCHED, Field.SEASON_TO);
    assertThat(model.save()).isFalse();
    assertThat(written).isEmpty();
  }

  @Test
  void aBoatCannotHaveBeenAfloatBeforeItWasBuilt() {
    model.form().set(Field.LAUNCHED, "2015-06-01");
    assertThat(model.form().problems()).containsOnlyKeys(Field.LAUNCHED);
    model.form().set(Field.LAUNCHED, "2201-06-01");
    assertThat(model.form().problems()).containsKey(Field.LAUNCHED);
  }

  @Test
  void twoBoatsOfAModelCannotHaveOneHullNumber() {
    model.newBoat();
    model.form().set(Field.MODEL, "dinghy");
    model.form().set(Field.HULL, "7");
    assertThat(model.form().problems().get(Field.HULL)).contains("Knot");
    model.form().set(Field.MODEL, "barge");
    assertThat(model.form().problems()).doesNotContainKey(Field.HULL);
  }

  @Test
  void savingWritesTheWholeBoatAndKeepsItsIdAndLog() {
    model.form().set(Field.NAME, "Red Knot");
    model.form().set(Field.USE, "charter");
    model.form().set(Field.WATER, "brackish");
    model.form().set(Field.SEASON_FROM, "1 may");
    model.form().set(Field.SEASON_TO, "--09-30");
    model.form().fit("vent", "vent-fitted");
    assertThat(model.save()).isTrue();
    Boat boat = written.get(0);
    assertThat(boat.id()).isEqualTo("knot");
    assertThat(boat.name()).isEqualTo("Red Knot");
    assertThat(boat.use()).isEqualTo(Use.CHARTER);
    assertThat(boat.water()).isEqualTo(Water.BRACKISH);
    assertThat(boat.launched()).contains(LocalDate.of(2016, 5, 20));
    assertThat(boat.season()).contains(new Season(MonthDay.of(5, 1), MonthDay.of(9, 30)));
    assertThat(boat.has("vent-fitted")).isTrue();
    assertThat(boat.log()).hasSize(2);
    assertThat(model.form().isChanged()).isFalse();
    assertThat(notices.current().orElseThrow().text()).isEqualTo("Red Knot is saved.");
  }

  @Test
  void aBoatThatCannotBeWrittenStaysUnsavedAndSaysSo() {
    BoatFormModel failing =
        new BoatFormModel(
            session,
            (library, base, boat) ->
                new BoatWriter.Refused(
                    Problem.error("boats/knot/boat.yaml", 0, "", "no room", "make some")),
            Steps.atOnce(notices),
            notices);
    failing.form().set(Field.NAME, "Red Knot");
    failing.save();
    assertThat(failing.form().isChanged()).isTrue();
    assertThat(notices.current().orElseThrow().text())
        .isEqualTo("Red Knot is not saved. The file boats/knot/boat.yaml no room. Make some.");
    assertThat(notices.current().orElseThrow().failure()).isTrue();
  }

  @Test
  void whatSomebodyElseChangedTooIsShownBesideAndEitherCanBeTaken() {
    Boat knot = model.form().original().orElseThrow();
    Boat theirs =
        DraftBoat.of(
            Draft.of(knot).with(Field.NAME, "Great Knot").with(Field.NOTE, "theirs"),
            knot.model(),
            Optional.of(knot),
            List.of());
    List<Optional<Boat>> bases = new ArrayList<>();
    BoatFormModel two =
        new BoatFormModel(
            session,
            (library, base, boat) -> {
              bases.add(base);
              return base.equals(Optional.of(theirs))
                  ? save(library, base, boat)
                  : new BoatWriter.Clash(theirs, merged(theirs, boat), List.of("name"));
            },
            Steps.atOnce(notices),
            notices);
    two.form().set(Field.NAME, "Red Knot");
    two.save();
    assertThat(written).isEmpty();
    assertThat(notices.current().orElseThrow().text())
        .contains("somebody else changed the same entry");
    assertThat(two.form().draft().text(Field.NAME)).isEqualTo("Red Knot");
    assertThat(two.form().draft().text(Field.NOTE)).isEqualTo("theirs");
    assertThat(two.form().clashes().fields()).containsEntry(Field.NAME, "Great Knot");
    two.form().takeTheirs(Field.NAME);
    assertThat(two.form().draft().text(Field.NAME)).isEqualTo("Great Knot");
    two.form().undo();
    two.save();
    assertThat(bases).containsExactly(Optional.of(knot), Optional.of(theirs));
    assertThat(written).extracting(Boat::name).containsExactly("Red Knot");
    assertThat(two.form().clashes()).isEqualTo(Clashes.NONE);
  }

  private static Boat merged(Boat theirs, Boat mine) {
    return DraftBoat.of(
        Draft.of(theirs).with(Field.NAME, mine.name()),
        theirs.model(),
        Optional.of(theirs),
        List.of());
  }

  @Test
  void leavingWaitsForTheWriteAndStaysWhenItFails() {
    Deque<Runnable> work = new ArrayDeque<>();
    AtomicBoolean works = new AtomicBoolean();
    BoatFormModel slow =
        new BoatFormModel(
            session,
            (library, base, boat) ->
                works.get()
                    ? save(library, base, boat)
                    : new BoatWriter.Refused(Problem.error("f", 0, "", "w", "r")),
            new Background(work::add, Runnable::run, new Activity(), notices),
            notices);
    slow.askUnsaved(() -> Answer.SAVE);
    AtomicInteger closed = new AtomicInteger();
    slow.form().set(Field.NAME, "Red Knot");
    assertThat(slow.mayLeave(closed::incrementAndGet)).isFalse();
    assertThat(slow.isSaving()).isTrue();
    assertThat(slow.mayLeave(closed::incrementAndGet)).isFalse();
    work.pop().run();
    assertThat(closed).hasValue(0);
    assertThat(notices.current().orElseThrow().failure()).isTrue();
    assertThat(slow.form().isChanged()).isTrue();
    works.set(true);
    assertThat(slow.mayLeave(closed::incrementAndGet)).isFalse();
    work.pop().run();
    assertThat(closed).hasValue(1);
    assertThat(slow.mayLeave(closed::incrementAndGet)).isTrue();
  }

  @Test
  void aNewBoatSaysWhatIsMissingOnlyOnceSavingIsTried() {
    model.newBoat();
    assertThat(model.form().isNew()).isTrue();
    assertThat(model.form().problems()).isEmpty();
    assertThat(model.save()).isFalse();
    assertThat(model.form().problems())
        .containsKeys(Field.NAME, Field.MODEL, Field.HULL, Field.BUILT);
  }

  @Test
  void aNewBoatGetsAFolderNameOfItsOwnAndBecomesTheChosenOne() {
    model.newBoat();
    model.form().set(Field.NAME, "Knot");
    model.form().set(Field.MODEL, "barge");
    model.form().set(Field.HULL, "12");
    model.form().set(Field.BUILT, "2008");
    assertThat(model.save()).isTrue();
    assertThat(written.get(0).id()).isEqualTo("knot-2");
    assertThat(written.get(0).equipment()).containsEntry("helm", "wheel");
    assertThat(model.form().isNew()).isFalse();
    assertThat(model.form().original().map(Boat::id))
        .as("she stays in the form until the workspace is read with her")
        .contains("knot-2");
  }

  @Test
  void stepsCanBeUndoneATypedFieldAtATime() {
    model.form().set(Field.NAME, "K");
    model.form().set(Field.NAME, "Kn");
    model.form().fit("vent", "vent-fitted");
    model.form().set(Field.NAME, "Kno");
    model.form().undo();
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Kn");
    model.form().undo();
    assertThat(model.form().draft().equipment()).containsEntry("vent", "vent-none");
    model.form().undo();
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Knot");
    assertThat(model.form().canUndo()).isFalse();
    assertThat(model.form().isChanged()).isFalse();
  }

  @Test
  void goingElsewhereWithUnsavedChangesAsksAndStaysWhenToldTo() {
    model.form().set(Field.NAME, "Red Knot");
    model.open("stint");
    assertThat(asked).isEqualTo(1);
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Red Knot");
    answer = Answer.DROP;
    model.open("stint");
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Stint");
    assertThat(written).isEmpty();
  }

  @Test
  void goingElsewhereCanSaveFirst() {
    answer = Answer.SAVE;
    model.form().set(Field.NAME, "Red Knot");
    model.open("stint");
    assertThat(written).extracting(Boat::name).containsExactly("Red Knot");
    assertThat(model.form().draft().text(Field.NAME)).isEqualTo("Stint");
  }

  @Test
  void savingThatFailsItsChecksStays() {
    answer = Answer.SAVE;
    model.form().set(Field.NAME, "");
    model.open("stint");
    assertThat(model.form().original().orElseThrow().id()).isEqualTo("knot");
    assertThat(model.mayLeave(() -> {})).isFalse();
  }

  @Test
  void withoutChangesNothingIsAsked() {
    model.open("stint");
    assertThat(asked).isZero();
    assertThat(model.mayLeave(() -> {})).isTrue();
  }

  @Test
  void readingTheWorkspaceAgainKeepsWhatIsBeingTyped() {
    model.form().set(Field.NOTE, "half a sentence");
    session.replace(SmallWorkspace.read());
    assertThat(model.form().draft().text(Field.NOTE)).isEqualTo("half a sentence");
  }
}
