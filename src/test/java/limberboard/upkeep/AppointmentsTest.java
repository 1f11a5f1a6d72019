package limberboard.upkeep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.WorkspaceReader;
import limberboard.library.TestWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Outsider;
import limberboard.upkeep.Appointments.Call;
import limberboard.upkeep.Due.Group;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is to be booked with others, and when. */
class AppointmentsTest {
  private static final LocalDate ON = LocalDate.of(2026, 11, 25);
  private static final String BOAT =
      "name: Knot\nmodel: plover-20\nhull: 17\nbuilt: 2014\n"
          + "season: {from: --04-15, to: --10-15}\n";

  @TempDir Path folder;
  private TestWorkspace workspace;

  @BeforeEach
  void makeWorkspace() {
    workspace = new TestWorkspace(folder);
    workspace.write("boats/knot/boat.yaml", BOAT);
  }

  private void log(String... lines) {
    workspace.write(
        "boats/knot/log.csv",
        "date,work,engine-hours,note\n" + String.join(",,\n", lines) + ",,\n");
  }

  private void page(String id, String keys) {
    workspace.write(
        "articles/procedures/" + id + ".md",
        "---\ntitle: The "
            + id
            + "\nsystem: deck\nwork: service\nminutes: 90\n"
            + (keys.contains("skill:") ? "" : "skill: yard\n")
            + keys
            + "---\n1. Do it.\n");
  }

  private static String yearly(String phase, String left, String with, String book) {
    return "interval: {every: P1Y, phase: "
        + phase
        + ", left-undone: "
        + left
        + ", need: must}\nappointment: {with: "
        + with
        + ", minutes: 20"
        + (book.isEmpty() ? "" : ", book: " + book)
        + "}\n";
  }

  private Upkeep upkeep() {
    try {
      var read = new WorkspaceReader(new WorkspaceFolders(folder)).read();
      return Upkeep.of(read.library(), new Fitting(read.boat("knot").orElseThrow(), ON));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> said(Appointments appointments) {
    List<String> said = new ArrayList<>();
    for (Call call : appointments.calls()) {
      said.add(call.said(LocalDate::toString));
      call.all().forEach(each -> said.add(each.due().id() + " " + words(each)));
    }
    return said;
  }

  private static String words(Appointed each) {
    return each.whenToBook(LocalDate::toString);
  }

  @Test
  void aDayToBookThatIsGoneIsSaidWithTheDayAndTheOthersWithTheirs() {
    page("swaging", yearly("ashore-mast-down", "hurts", "rigger", "P12W"));
    page("lift", yearly("ashore-mast-up", "stops", "crane", "P6W"));
    log("2025-04-20,swaging", "2026-04-14,lift");
    Appointments appointments = upkeep().appointments();
    assertThat(said(appointments))
        .containsExactly(
            "A rigger: call now",
            "swaging book now: should have been booked by 2026-01-26",
            "The crane: call by 2027-03-03",
            "lift book by 2027-03-03");
    assertThat(appointments.all().get(0).isLate()).isTrue();
    assertThat(appointments.sum())
        .isEqualTo(
            "2 appointments, 1 of them now. Your own time: 40 min practised, 1 h the first time.");
  }

  @Test
  void thatItShouldHaveBeenBookedDoesNotMoveWithTheDayAskedAbout() {
    page("swaging", yearly("ashore-mast-down", "hurts", "rigger", "P12W"));
    log("2025-04-20,swaging");
    Boat boat = upkeep().fitting().boat();
    for (int days = 0; days < 60; days += 20) {
      LocalDate on = ON.plusDays(days);
      try {
        var library = new WorkspaceReader(new WorkspaceFolders(folder)).read().library();
        Upkeep then = Upkeep.of(library, new Fitting(boat, on));
        assertThat(words(then.appointments().all().get(0)))
            .isEqualTo("book now: should have been booked by 2026-01-26");
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  @Test
  void whatHasToBeBookedLongerAheadThanItIsUntilThenIsBookedNow() {
    page("swaging", yearly("ashore-mast-up", "hurts", "rigger", "P26W"));
    page("welding", "interval: {every: P1M}\nappointment: {with: yard, minutes: 5, book: P12W}\n");
    log("2026-04-14,swaging", ON.minusDays(10) + ",welding");
    assertThat(said(upkeep().appointments()))
        .containsExactly(
            "A rigger: call now",
            "swaging book now: should have been booked by 2026-10-14",
            "The yard: call now",
            "welding book now: should have been booked by " + ON.minusDays(10));
  }

  @Test
  void itIsTodayOnTheLastDayItself() {
    page("lift", "interval: {every: P1Y}\nappointment: {with: crane, minutes: 5, book: P2W}\n");
    log(ON.plusWeeks(2).minusYears(1) + ",lift");
    assertThat(said(upkeep().appointments()))
        .containsExactly("The crane: call now", "lift book today");
  }

  @Test
  void withoutATimeACallTheDayBeforeWillDo() {
    page("lift", yearly("ashore-mast-up", "stops", "crane", ""));
    log("2026-04-14,lift");
    Due lift = Demo.find(upkeep(), "lift").orElseThrow();
    assertThat(said(upkeep().appointments())).contains("lift book by " + lift.plan().minusDays(1));
  }

  @Test
  void oneCallBooksWhatFallsNearTogetherWithTheSamePerson() {
    page("seal", yearly("ashore-mast-up", "sinks", "yard", "P8W"));
    page("hose", yearly("ashore-mast-up", "stops", "yard", "P6W"));
    page("paint", yearly("lay-up", "looks", "yard", "P2W"));
    page("lift", yearly("ashore-mast-up", "stops", "crane", "P6W"));
    log("2026-04-14,seal", "2026-04-14,hose", "2026-10-20,paint", "2026-04-14,lift");
    Appointments appointments = upkeep().appointments();
    assertThat(said(appointments))
        .containsExactly(
            "The yard: one call by 2027-02-17 books these two, which fall near together",
            "seal book by 2027-02-17",
            "hose book by 2027-03-03",
            "The crane: call by 2027-03-03",
            "lift book by 2027-03-03",
            "The yard: call by 2027-10-01",
            "paint book by 2027-10-01");
    assertThat(appointments.calls().get(0).minutes()).isEqualTo(40);
  }

  @Test
  void withNothingToBookItSaysSoAndWhatComesFirst() {
    assertThat(upkeep().appointments().calls()).isEmpty();
    assertThat(upkeep().appointments().rest(LocalDate::toString))
        .isEqualTo(
            "Nothing is to be booked: what is due now and this season is the owner's own work.");
    page("hull", "interval: {every: P5Y}\nappointment: {with: surveyor, minutes: 60, book: P4W}\n");
    log("2025-06-01,hull");
    Appointments then = upkeep().appointments();
    assertThat(then.calls()).isEmpty();
    assertThat(then.rest(LocalDate::toString))
        .endsWith(
            "1 appointment comes after this season, the first with a surveyor, book by 2030-05-04:"
                + " “The hull”.");
    assertThat(said(upkeep().appointments(true)))
        .containsExactly("A surveyor: call by 2030-05-04", "hull book by 2030-05-04");
  }

  @Test
  void whatTheLogDoesNotTellHasNoDayToBookBy() {
    page(
        "injector",
        "interval: {engine-hours: 500}\nappointment: {with: engineer, minutes: 5, book: P4W}\n");
    assertThat(said(upkeep().appointments()))
        .containsExactly(
            "An engineer: no day to book by can be told",
            "injector no day to book by: the log does not tell when it is due");
  }

  @Test
  void ofWhatNobodyKnowsItIsNotSaidThatItShouldHaveBeenBooked() {
    workspace.write("boats/knot/boat.yaml", BOAT + "bought: 2026-10-03\n");
    page("swaging", yearly("ashore-mast-down", "hurts", "rigger", "P12W"));
    Appointed swaging = upkeep().appointments().all().get(0);
    assertThat(words(swaging)).isEqualTo("book now, unless you find that it was done");
    assertThat(swaging.isLate()).isFalse();
  }

  @Test
  void lookingAgainByTheWorksOwnLastTestIsTheOwners() {
    page("seal", "appointment: {with: yard, minutes: 20, book: P8W}\nlook-again: {after: P1W}\n");
    log(ON.minusDays(3) + ",seal");
    assertThat(upkeep().all()).extracting(Due::id).containsExactly("seal/again");
    assertThat(upkeep().appointments().calls()).isEmpty();
  }

  @Test
  void whatAnOwnerDoesOfItIsSaid() {
    page("scrub", "skill: owner\n" + yearly("ashore-mast-up", "costs", "yard", "P2W"));
    page(
        "gas",
        "skill: licensed\nowner-parts: [What you look at]\n"
            + yearly("ashore-mast-up", "sinks", "gas-fitter", "P2W"));
    page("seal", yearly("ashore-mast-up", "sinks", "yard", "P8W"));
    assertThat(upkeep().appointments().all())
        .extracting(each -> each.due().id() + ": " + each.ownPart().orElse("-"))
        .containsExactlyInAnyOrder(
            "scrub: Or do it yourself: it is work for any owner.",
            "gas: Your own part: What you look at.",
            "seal: -");
  }

  @Provide
  Arbitrary<Boat> boats() {
    return Arbitraries.of(Demo.workspace().boats());
  }

  @Property(seed = "20261129", tries = 120)
  void allThatIsDueWithOthersIsInOneCallAndTheCallsAreInOrder(
      @ForAll("boats") Boat boat, @ForAll @IntRange(min = 0, max = 1500) int days) {
    LocalDate on = LocalDate.of(2024, 1, 1).plusDays(days);
    Upkeep upkeep = Demo.upkeep(boat, on);
    Appointments appointments = upkeep.appointments();
    List<String> wanted =
        upkeep.all().stream().filter(due -> due.appointment().isPresent()).map(Due::id).toList();
    List<String> all = new ArrayList<>();
    appointments.all().forEach(each -> all.add(each.due().id()));
    appointments.later().forEach(each -> all.add(each.due().id()));
    assertThat(all).containsExactlyInAnyOrderElementsOf(wanted);
    assertThat(appointments.later())
        .allSatisfy(
            each ->
                assertThat(each.booking().orElseThrow().by()).isAfter(upkeep.thisSeason().to()));
    assertThat(appointments.later())
        .allSatisfy(each -> assertThat(each.due().group()).isEqualTo(Group.COMING));
    assertThat(appointments.calls())
        .isSortedAccordingTo(Comparator.comparing(AppointmentsTest::first));
    Map<Outsider, LocalDate> called = new EnumMap<>(Outsider.class);
    for (Call call : appointments.calls()) {
      LocalDate first = first(call);
      call.all().forEach(each -> assertThat(day(each)).isBetween(first, near(first)));
      LocalDate before = called.put(call.whom(), first);
      assertThat(before == null || first.isAfter(near(before))).isTrue();
    }
    assertThat(appointments.minutes())
        .isEqualTo(appointments.all().stream().mapToInt(Appointed::minutes).sum());
    assertThat(upkeep.appointments(true).all()).hasSize(wanted.size());
  }

  private static LocalDate day(Appointed each) {
    return each.booking().map(Booking::day).orElse(LocalDate.MAX);
  }

  private static LocalDate first(Call call) {
    return day(call.all().get(0));
  }

  private static LocalDate near(LocalDate first) {
    return first.equals(LocalDate.MAX) ? first : first.plus(Appointments.NEAR);
  }
}
